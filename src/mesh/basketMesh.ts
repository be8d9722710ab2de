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
  /** Vertices carry their row, 1 … R. */
  readonly weavers: StrandMesh;
  /** A board, the rows woven flat in a base, rim and handle. */
  readonly fittings: StrandMesh;
}

/** Stakes and weavers as triangles, going over and under each other, and the finish. Lengths mm, z up. */
export function basketMesh(basket: Basket, stage: Stage = {}): BasketMesh {
  const { stakes, weavers, base, finish } = basketStrands(basket, stage);
  const { light = false } = stage;
  return {
    stakes: sweepStrands(stakes, light ? 0 : undefined),
    weavers: sweepStrands(weavers, light ? 1 : undefined),
    fittings: sweepStrands([...base, ...finish], light ? 1 : undefined),
  };
}
