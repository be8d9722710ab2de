/** A plan on a desk, for the tests of the panel's controls. */
import type { Control, Controls } from '../../src/panel/control.ts';
import { foundProblem } from '../../src/panel/foundProblem.ts';
import type { PlanEdits } from '../../src/panel/usePlanEdits.ts';
import { demos } from '../../src/plan/demo/demos.ts';
import { changeBands, changeBase } from '../../src/plan/rescale.ts';
import type { Plan } from '../../src/plan/schema.ts';

/** Edits of a plan; one that is refused leaves it as it is. */
export function desk(plan: Plan = demos[0].plan): PlanEdits {
  let now = plan;
  const change: PlanEdits['change'] = (_label, make) => {
    const after = make(now);
    const problem = foundProblem(after);
    if (problem === null) now = after;
    return problem;
  };
  return {
    plan: () => now,
    change,
    base: (label, base) => change(label, (old) => changeBase(old, base)),
    bands: (label, bands) => change(label, (old) => changeBands(old, bands)),
  };
}

/** Enters a value into the control `key`, whichever kind it is. */
export function enter(controls: Controls, key: string, value: string | number): string | null {
  const control: Control | undefined = controls[key];
  if (!control) throw new RangeError(`no control "${key}"`);
  const commit = control.onCommit as (value: string | number, stepped: boolean) => string | null;
  return commit(value, false);
}
