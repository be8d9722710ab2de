/** The settled basket as it is seen: every stake and weaver in its true width and thickness. */
import type { Basket } from '../model/basket.ts';
import { stakeStrands } from './stakeStrands.ts';
import type { StrandMesh } from './strandMesh.ts';
import { nodeNormals } from './surface.ts';
import { sweepStrands } from './sweepStrands.ts';
import { weaverStrands } from './weaverStrands.ts';

/** Plain typed arrays, ready to be passed between threads. */
export interface BasketMesh {
  /** Vertices carry the index of their stake in `net.stakes`. */
  readonly stakes: StrandMesh;
  /** Vertices carry their row, 1 … R, and come in the order of the rows. */
  readonly weavers: StrandMesh;
}

/** Stakes and weavers as triangles, going over and under each other. Lengths mm, z up. */
export function basketMesh(basket: Basket): BasketMesh {
  const normals = nodeNormals(basket.net, basket.positions);
  return {
    stakes: sweepStrands(stakeStrands(basket, normals)),
    weavers: sweepStrands(weaverStrands(basket, normals)),
  };
}
