import type { BasketMesh } from '../mesh/basketMesh.ts';
import type { Basket } from '../model/basket.ts';
import type { Extent } from './frameBasket.ts';
import { extent } from './frameBasket.ts';

/** A basket as it stands on the stage. */
export interface StageShape {
  readonly basket: Basket;
  readonly mesh: BasketMesh;
  /** Whether it has come to rest: the eye then follows one that has outgrown the picture. */
  readonly isAtRest: boolean;
  /**
   * True for a basket that is only partly woven: its stakes stand far over its nodes, and the eye keeps nearer to
   * it, as it changes much from row to row.
   */
  readonly isPart?: true;
}

/** How far it reaches with all that stands out over its nodes: finish, and stakes that still stand on. */
export function extentOf({ basket, mesh }: StageShape): Extent {
  return extent(basket, [mesh.fittings.positions, mesh.stakes.positions]);
}
