import { limits } from '../plan/limits.ts';
import type { Strand, Unit } from '../plan/schema.ts';
import { strandSections } from '../plan/strand.ts';
import type { Controls } from './control.ts';
import { choicesOf } from './control.ts';

/** Section, width and thickness of a strand; a round one has its width only. */
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
