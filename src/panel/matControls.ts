import { baseWords } from '#words/panelBase.ts';
import { baseGaps } from '../plan/baseSize.ts';
import { limits } from '../plan/limits.ts';
import type { MatBase, Unit } from '../plan/schema.ts';
import type { Control, Controls } from './control.ts';
import { crossedControls } from './crossedControls.ts';
import type { PlanEdits } from './usePlanEdits.ts';

const words = baseWords.mat;

/** Stakes, gaps and fillers of a mat. */
export function matControls(base: MatBase, unit: Unit, edits: PlanEdits): Controls {
  return {
    ...crossedControls(base, edits),
    ...gapControls(base, unit, edits),
    fillersLengthwise: filler('lengthwise', base, edits),
    fillersCrosswise: filler('crosswise', base, edits),
  };
}

const oneGap = 'one';
const twoGaps = 'two';

function gapControls(base: MatBase, unit: Unit, edits: PlanEdits): Controls {
  const gaps = baseGaps(base);
  const length = (
    label: string,
    mm: number,
    onCommit: (mm: number, stepped: boolean) => string | null,
  ): Control => ({ kind: 'length', label, mm, unit, ...limits.gap, onCommit });
  const { gap: _gap, gaps: _gaps, ...others } = base;
  const kind: Control = {
    kind: 'choice',
    label: words.gapKind.label,
    word: 'gap',
    value: base.gaps ? twoGaps : oneGap,
    choices: [
      { value: oneGap, text: words.gapKinds.one },
      { value: twoGaps, text: words.gapKinds.two },
    ],
    onCommit: (word) =>
      edits.base(words.gapKind.act, {
        ...others,
        ...(word === twoGaps ? { gaps } : { gap: gaps.lengthwise }),
      }),
  };
  if (!base.gaps) {
    const one = length(baseWords.gap.label, gaps.lengthwise, (gap, stepped) =>
      edits.base(baseWords.gap.act, { ...others, gap }, stepped),
    );
    return { gapKind: kind, gap: one };
  }
  return {
    gapKind: kind,
    gapLengthwise: length(words.gapLengthwise.label, gaps.lengthwise, (lengthwise, stepped) =>
      edits.base(words.gapLengthwise.act, { ...others, gaps: { ...gaps, lengthwise } }, stepped),
    ),
    gapCrosswise: length(words.gapCrosswise.label, gaps.crosswise, (crosswise, stepped) =>
      edits.base(words.gapCrosswise.act, { ...others, gaps: { ...gaps, crosswise } }, stepped),
    ),
  };
}

/** A mat without fillers has no such key; the first filler puts it there and the last takes it away. */
function filler(way: 'lengthwise' | 'crosswise', base: MatBase, edits: PlanEdits): Control {
  const { label, act } = words.fillers[way];
  const { fillers = { lengthwise: 0, crosswise: 0 }, ...others } = base;
  return {
    kind: 'count',
    label,
    word: 'filler',
    count: fillers[way],
    ...limits.fillers,
    onCommit: (count, stepped) => {
      const next = { ...fillers, [way]: count };
      const isFilled = next.lengthwise + next.crosswise > 0;
      const filled = isFilled ? { ...others, fillers: next } : others;
      return edits.base(act, filled, stepped);
    },
  };
}
