import { baseWords } from '#words/panelBase.ts';
import { limits } from '../plan/limits.ts';
import type { MatBase, OvalBase } from '../plan/schema.ts';
import type { Controls } from './control.ts';
import type { PlanEdits } from './usePlanEdits.ts';

/** Counts of the stakes that cross in a mat, or in the mat of an oval. */
export function crossedControls(base: MatBase | OvalBase, edits: PlanEdits): Controls {
  return {
    lengthwise: {
      kind: 'count',
      label: baseWords.lengthwise.label,
      word: 'stake',
      count: base.lengthwise,
      ...limits.stakes,
      onCommit: (lengthwise, stepped) =>
        edits.base(baseWords.lengthwise.act, { ...base, lengthwise }, stepped),
    },
    crosswise: {
      kind: 'count',
      label: baseWords.crosswise.label,
      count: base.crosswise,
      ...limits.stakes,
      onCommit: (crosswise, stepped) =>
        edits.base(baseWords.crosswise.act, { ...base, crosswise }, stepped),
    },
  };
}
