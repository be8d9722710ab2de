import type { Basket } from '../../src/model/basket.ts';
import { settleBasket } from '../../src/model/settleBasket.ts';
import { demos } from '../../src/plan/demo/demos.ts';
import type { Unit } from '../../src/plan/schema.ts';

const settled = settleBasket(demos[0].plan);

/** The first demo, settled, with its lengths shown in `unit`. */
export function settledDemo(unit: Unit): Basket {
  return { ...settled, plan: { ...settled.plan, display: { unit } } };
}
