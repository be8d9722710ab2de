/** The settled basket as it is seen: every strand in its true width and thickness. */
import type { Basket } from '../model/basket.ts';
import type { Stage } from './basketStrands.ts';
import { basketStrands } from './basketStrands.ts';
import type { StrandMesh } from './strandMesh.ts';
import { sweepStrands } from './sweepStrands.ts';

/** Plain typed arrays, ready to be passed between threads. */
export interface BasketMesh {
  /** Vertices carry the index of their stake in `net.stakes`. */
  readonly stakes: StrandMesh;
  /** Vertices carry their row, 1 … R, and come in the order of the rows. */
  readonly weavers: StrandMesh;
  /** A board, the rows woven flat in a base, rim and handle. */
  readonly fittings: StrandMesh;
}

/** Stakes and weavers as triangles, going over and under each other, and the finish. Lengths mm, z up. */
export function basketMesh(basket: Basket, stage: Stage = {}): BasketMesh {
  const { stakes, weavers, base, finish } = basketStrands(basket, stage);
  return {
    stakes: sweepStrands(stakes),
    weavers: sweepStrands(weavers),
    fittings: sweepStrands([...base, ...finish]),
  };
}
