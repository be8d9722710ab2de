import { limits } from '../plan/limits.ts';
import type { Strand, Unit } from '../plan/schema.ts';
import { strandSections } from '../plan/strand.ts';
import { sizeOf, strandSizes } from '../plan/strandSizes.ts';
import type { Choice, Control, Controls } from './control.ts';
import { choicesOf } from './control.ts';

/** Section, size as sold, width and thickness of a strand; a round one has its width only. */
export function strandControls(
  name: string,
  strand: Strand,
  unit: Unit,
  onStrand: (label: string, strand: Strand, stepped: boolean) => string | null,
): Controls {
  const { section, width, thickness } = strand;
  const isRound = section === 'round';
  const { width: wide, thickness: thick } = limits;
  const widest = isRound ? Math.min(wide.most, thick.most) : wide.most;
  const controls: Controls = {
    section: {
      kind: 'choice',
      label: `${name} section`,
      ...(name === 'Weaver' && { word: 'weaver' }),
      value: section,
      choices: choicesOf(strandSections),
      onCommit: (word) => {
        const chosen = strandSections.find((one) => one === word) ?? section;
        const round = chosen === 'round' ? { thickness: Math.min(width, thick.most) } : {};
        const across = chosen === 'round' ? { width: Math.min(width, thick.most) } : {};
        const next = { ...strand, section: chosen, ...round, ...across };
        return onStrand(`the ${name.toLowerCase()} section`, next, false);
      },
    },
    size: sizeControl(name, strand, onStrand),
    width: {
      kind: 'length',
      label: isRound ? `${name} across` : `${name} width`,
      mm: width,
      unit,
      least: wide.least,
      most: widest,
      onCommit: (mm, stepped) => {
        const next = { ...strand, width: mm, ...(isRound ? { thickness: mm } : {}) };
        return onStrand(`the ${name.toLowerCase()} width`, next, stepped);
      },
    },
  };
  if (isRound) return controls;
  return {
    ...controls,
    thickness: {
      kind: 'length',
      label: `${name} thickness`,
      mm: thickness,
      unit,
      least: thick.least,
      most: thick.most,
      onCommit: (mm, stepped) =>
        onStrand(`the ${name.toLowerCase()} thickness`, { ...strand, thickness: mm }, stepped),
    },
  };
}

const own = 'a size of my own';

/** The sizes that the strand is sold in. A size typed in is one of one's own. */
function sizeControl(
  name: string,
  strand: Strand,
  onStrand: (label: string, strand: Strand, stepped: boolean) => string | null,
): Control {
  const sizes = strandSizes[strand.section];
  const choices = sizes.map(({ name: value, width, thickness }): Choice => {
    const across = strand.section === 'round' ? `${width} mm` : `${width} × ${thickness} mm`;
    return { value, text: `${value}, ${across}` };
  });
  return {
    kind: 'choice',
    label: `${name} size`,
    value: sizeOf(strand)?.name ?? own,
    choices: [...choices, { value: own, text: own }],
    onCommit: (word) => {
      const size = sizes.find((one) => one.name === word);
      if (!size) return null;
      const { width, thickness } = size;
      return onStrand(`the ${name.toLowerCase()} size`, { ...strand, width, thickness }, false);
    },
  };
}
