import { strandWords } from '#words/panelStrands.ts';
import { strandNameWords } from '#words/strandNames.ts';
import { limits } from '../plan/limits.ts';
import type { Strand, Unit } from '../plan/schema.ts';
import { strandSections } from '../plan/strand.ts';
import { sizeOf, strandSizes } from '../plan/strandSizes.ts';
import type { Choice, Control, Controls } from './control.ts';
import { choicesOf } from './control.ts';

/** What the strand is called. */
export type StrandName = 'weaver' | 'stake' | 'spoke';

/** What of a strand is changed. */
export type StrandPart = 'section' | 'size' | 'width' | 'thickness';

type OnStrand = (part: StrandPart, strand: Strand, stepped: boolean) => string | null;

/** Section, size as sold, width and thickness of a strand; a round one has its width only. */
export function strandControls(
  name: StrandName,
  strand: Strand,
  unit: Unit,
  onStrand: OnStrand,
): Controls {
  const { section, width, thickness } = strand;
  const labels = strandWords.labels[name];
  const isRound = section === 'round';
  const { width: wide, thickness: thick } = limits;
  const widest = isRound ? Math.min(wide.most, thick.most) : wide.most;
  const controls: Controls = {
    section: {
      kind: 'choice',
      label: labels.section,
      ...(name === 'weaver' && { word: 'weaver' }),
      value: section,
      choices: choicesOf(strandSections, strandNameWords.section),
      onCommit: (word) => {
        const chosen = strandSections.find((one) => one === word) ?? section;
        const round = chosen === 'round' ? { thickness: Math.min(width, thick.most) } : {};
        const across = chosen === 'round' ? { width: Math.min(width, thick.most) } : {};
        const next = { ...strand, section: chosen, ...round, ...across };
        return onStrand('section', next, false);
      },
    },
    size: sizeControl(name, strand, onStrand),
    width: {
      kind: 'length',
      label: isRound ? labels.across : labels.width,
      mm: width,
      unit,
      least: wide.least,
      most: widest,
      onCommit: (mm, stepped) => {
        const next = { ...strand, width: mm, ...(isRound ? { thickness: mm } : {}) };
        return onStrand('width', next, stepped);
      },
    },
  };
  if (isRound) return controls;
  return {
    ...controls,
    thickness: {
      kind: 'length',
      label: labels.thickness,
      mm: thickness,
      unit,
      least: thick.least,
      most: thick.most,
      onCommit: (mm, stepped) => onStrand('thickness', { ...strand, thickness: mm }, stepped),
    },
  };
}

/** Among the sizes, which go by their number. */
const own = 'own';

/** The sizes that the strand is sold in. A size typed in is one of one's own. */
function sizeControl(name: StrandName, strand: Strand, onStrand: OnStrand): Control {
  const { ownSize, roundSize, flatSize } = strandWords;
  const sizes = strandSizes[strand.section];
  const choices = sizes.map(({ name, width, thickness }, at): Choice => {
    const isRound = strand.section === 'round';
    return {
      value: `${at}`,
      text: isRound ? roundSize(name, `${width}`) : flatSize(name, `${width}`, `${thickness}`),
    };
  });
  const has = sizeOf(strand);
  const at = has ? sizes.indexOf(has) : -1;
  return {
    kind: 'choice',
    label: strandWords.labels[name].size,
    value: at < 0 ? own : `${at}`,
    choices: [...choices, { value: own, text: ownSize }],
    onCommit: (word) => {
      const size = sizes[Number(word)];
      if (!size) return null;
      const { width, thickness } = size;
      return onStrand('size', { ...strand, width, thickness }, false);
    },
  };
}
