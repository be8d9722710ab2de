import { girthLine } from '../../../src/model/girth/girthLine.ts';
import { mostChanges } from '../../../src/model/replan/pullLimits.ts';
import { settleBasket } from '../../../src/model/settleBasket.ts';
import { demos } from '../../../src/plan/demo/demos.ts';

/** The first demo, its girths, its limits, and its basket. */
export const plan = demos[0].plan;
export const planned = girthLine(plan);
export const most = mostChanges(plan, planned);
export const basket = settleBasket(plan);
export const last = planned.length - 1;
/** The plan's widest row. */
export const belly = planned.indexOf(Math.max(...planned));

/** Every row up to `row` at `share` of what was planned. */
export function wovenAt(share: number, row: number): Float64Array {
  return planned.slice(0, row + 1).map((girth, k) => (k === 0 ? girth : share * girth));
}
