/** What the page and its worker say to each other. */
import type { BasketMesh } from '../mesh/basketMesh.ts';
import type { Basket } from '../model/basket.ts';
import type { Plan } from '../plan/schema.ts';

/** One plan to settle. `fresh` forgets the last shape first, so the answer is a cold one. */
export interface Question {
  readonly number: number;
  readonly plan: Plan;
  readonly fresh: boolean;
  /** Asked of the worker that drags go to: it makes ready for them while nothing is asked. */
  readonly drags?: true;
}

/** What came of a plan: the settled basket and its ribbons (a lighter look unless asked afresh), or why there is none. */
export type Answer = Settled | Failed;

export interface Settled {
  readonly kind: 'settled';
  readonly number: number;
  readonly basket: Basket;
  readonly mesh: BasketMesh;
  /** Time in the worker for settling and mesh together, ms. */
  readonly milliseconds: number;
}

export interface Failed {
  readonly kind: 'failed';
  readonly number: number;
  /** Why, in the words of whatever gave up. */
  readonly reason: string;
}
