import { baseWords } from '#words/panelBase.ts';
import { limits } from '../plan/limits.ts';
import type { OvalBase, Unit } from '../plan/schema.ts';
import type { Controls } from './control.ts';
import { crossedControls } from './crossedControls.ts';
import type { PlanEdits } from './usePlanEdits.ts';

/** The mat of an oval base, the border woven round it, and the ends that fan out at its corners. */
export function ovalControls(base: OvalBase, unit: Unit, edits: PlanEdits): Controls {
  return {
    ...crossedControls(base, edits),
    gap: {
      kind: 'length',
      label: baseWords.gap.label,
      word: 'gap',
      mm: base.gap,
      unit,
      ...limits.gap,
      onCommit: (gap, stepped) => edits.base(baseWords.gap.act, { ...base, gap }, stepped),
    },
    border: {
      kind: 'length',
      label: baseWords.oval.border.label,
      mm: base.border,
      unit,
      ...limits.border,
      onCommit: (border, stepped) =>
        edits.base(baseWords.oval.border.act, { ...base, border }, stepped),
    },
    fanned: {
      kind: 'count',
      label: baseWords.oval.fanned.label,
      count: base.fanned,
      ...limits.fanned,
      onCommit: (fanned, stepped) =>
        edits.base(baseWords.oval.fanned.act, { ...base, fanned }, stepped),
    },
  };
}
