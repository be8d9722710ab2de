/** Both plans in one unit: that of the first, whatever each is saved with. */
import { appWords } from '#words/app.ts';
import { unitWords } from '#words/units.ts';
import { presentSide } from '../../keep/compareHere.ts';
import type { Side } from '../../keep/compareStudio.ts';
import type { Studio } from '../../keep/studio.ts';
import type { Plan, Unit } from '../../plan/schema.ts';

/** `plan` with its lengths shown in `unit`. */
export function shownIn(plan: Plan, unit: Unit): Plan {
  return plan.display.unit === unit ? plan : { ...plan, display: { ...plan.display, unit } };
}

/** Changes one of the two plans as it is shown; the unit it is saved with stays, unless that is changed. */
export function changeShown(side: Side): Studio['change'] {
  return (next, label, merge) => {
    const { plan, change } = presentSide(side);
    const shown = presentSide('a').plan.display.unit;
    if (next.display.unit !== shown) showIn(next.display.unit);
    else change({ ...next, display: plan.display }, label, merge);
  };
}

/** Shows both plans in one unit, as a step of each. */
export function showIn(unit: Unit): void {
  for (const side of ['a', 'b'] as const) {
    const { plan, change } = presentSide(side);
    if (plan.display.unit !== unit)
      change(shownIn(plan, unit), appWords.settingUnit(unitWords.names[unit]));
  }
}
