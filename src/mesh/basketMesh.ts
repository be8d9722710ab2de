/** The settled basket as it is seen: every stake and weaver in its true width and thickness. */
import type { Basket } from '../model/basket.ts';
import { basketStrands } from './basketStrands.ts';
import type { StrandMesh } from './strandMesh.ts';
import { sweepStrands } from './sweepStrands.ts';

/** Plain typed arrays, ready to be passed between threads. */
export interface BasketMesh {
  /** Vertices carry the index of their stake in `net.stakes`. */
  readonly stakes: StrandMesh;
  /** Vertices carry their row, 1 … R, and come in the order of the rows. */
  readonly weavers: StrandMesh;
}

/** Stakes and weavers as triangles, going over and under each other. Lengths mm, z up. */
export function basketMesh(basket: Basket): BasketMesh {
  const { stakes, weavers } = basketStrands(basket);
  return { stakes: sweepStrands(stakes), weavers: sweepStrands(weavers) };
}
