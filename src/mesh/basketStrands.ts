/** All that a basket is made of, strand by strand. */
import type { Basket } from '../model/basket.ts';
import { stakeStrands } from './stakeStrands.ts';
import type { Strand } from './strandMesh.ts';
import { nodeNormals } from './surface.ts';
import { weaverStrands } from './weaverStrands.ts';

export interface BasketStrands {
  readonly stakes: readonly Strand[];
  readonly weavers: readonly Strand[];
}

/** Stakes and weavers, going over and under each other. */
export function basketStrands(basket: Basket): BasketStrands {
  const normals = nodeNormals(basket.net, basket.positions);
  return { stakes: stakeStrands(basket, normals), weavers: weaverStrands(basket, normals) };
}
