import { upsetts } from '../plan/baseParts.ts';
import { baseGaps, baseSize } from '../plan/baseSize.ts';
import { limits } from '../plan/limits.ts';
import type { Base, Unit } from '../plan/schema.ts';
import type { Control, Controls } from './control.ts';
import { choicesOf } from './control.ts';
import { strandControls } from './strandControls.ts';
import type { PlanEdits } from './usePlanEdits.ts';

/** Stakes, gaps, upsett and centre lift of the base. */
export function baseControls(base: Base, unit: Unit, edits: PlanEdits): Controls {
  const count = (label: string, key: 'lengthwise' | 'crosswise'): Control => ({
    kind: 'count',
    label,
    count: base[key],
    ...limits.stakes,
    onCommit: (stakes, stepped) =>
      edits.base(`the count of ${key} stakes`, { [key]: stakes }, stepped),
  });
  return {
    lengthwise: count('Lengthwise stakes', 'lengthwise'),
    crosswise: count('Crosswise stakes', 'crosswise'),
    ...strandControls('Stake', base.stake, unit, (label, stake, stepped) =>
      edits.base(label, { stake }, stepped),
    ),
    ...gapControls(base, unit, edits),
    upsett: {
      kind: 'choice',
      label: 'Upsett',
      value: base.upsett,
      choices: choicesOf(upsetts),
      onCommit: (word) =>
        edits.base('the upsett', { upsett: upsetts.find((one) => one === word) ?? base.upsett }),
    },
    centreLift: {
      kind: 'length',
      label: 'Centre lift',
      mm: base.centreLift,
      unit,
      least: limits.centreLift.least,
      most: mostLift(base),
      onCommit: (centreLift, stepped) => edits.base('the centre lift', { centreLift }, stepped),
    },
  };
}

function mostLift(base: Base): number {
  const { length, width } = baseSize(base);
  const { most, mostShare } = limits.centreLift;
  return Math.min(most, mostShare * Math.min(length, width));
}

const oneGap = 'one';
const twoGaps = 'two';

function gapControls(base: Base, unit: Unit, edits: PlanEdits): Controls {
  const gaps = baseGaps(base);
  const length = (
    label: string,
    mm: number,
    onCommit: (mm: number, stepped: boolean) => string | null,
  ): Control => ({ kind: 'length', label, mm, unit, ...limits.gap, onCommit });
  const kind: Control = {
    kind: 'choice',
    label: 'Gaps',
    value: base.gaps ? twoGaps : oneGap,
    choices: [
      { value: oneGap, text: 'same both ways' },
      { value: twoGaps, text: 'one for each way' },
    ],
    onCommit: (word) =>
      edits.change('the kind of gaps', (plan) => {
        const { gap: _gap, gaps: _gaps, ...others } = plan.base;
        const next = word === twoGaps ? { gaps } : { gap: gaps.lengthwise };
        return { ...plan, base: { ...others, ...next } };
      }),
  };
  if (!base.gaps) {
    const one = length('Gap', gaps.lengthwise, (gap, stepped) =>
      edits.base('the gap', { gap }, stepped),
    );
    return { gapKind: kind, gap: one };
  }
  return {
    gapKind: kind,
    gapLengthwise: length('Lengthwise gap', gaps.lengthwise, (lengthwise, stepped) =>
      edits.base('the lengthwise gap', { gaps: { ...gaps, lengthwise } }, stepped),
    ),
    gapCrosswise: length('Crosswise gap', gaps.crosswise, (crosswise, stepped) =>
      edits.base('the crosswise gap', { gaps: { ...gaps, crosswise } }, stepped),
    ),
  };
}
