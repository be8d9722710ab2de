/** Baskets that the tests of this room compare, each settled once. */
import type { Basket } from '../../../src/model/basket.ts';
import { settleBasket } from '../../../src/model/settleBasket.ts';
import { demos } from '../../../src/plan/demo/demos.ts';
import { movePoint } from '../../../src/plan/edit.ts';
import type { Plan } from '../../../src/plan/schema.ts';

/** The first demo, and the same with its rim drawn in less. */
export const trug: Plan = demos[0].plan;
export const flared: Plan = movePoint(trug, 2, { row: 32, girth: 720 });

/** A demo of another base and another number of rows. */
export const jar: Plan = demos[3]?.plan ?? trug;

const settled = new Map<Plan, Basket>();

/** The basket of a plan. */
export function basketOf(plan: Plan): Basket {
  const found = settled.get(plan) ?? settleBasket(plan);
  settled.set(plan, found);
  return found;
}
