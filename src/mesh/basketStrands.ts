/** All that a basket is made of, strand by strand. */
import type { Basket } from '../model/basket.ts';
import { drawnPlaces } from './drawnPlaces.ts';
import { flatRows } from './flatRows.ts';
import { stakeStrands } from './stakeStrands.ts';
import type { Strand } from './strandMesh.ts';
import { nodeNormals } from './surface.ts';
import { weaverStrands } from './weaverStrands.ts';

export interface BasketStrands {
  readonly stakes: readonly Strand[];
  readonly weavers: readonly Strand[];
  /** The rows woven flat in a base. */
  readonly base: readonly Strand[];
}

/** Stakes and weavers, going over and under each other. */
export function basketStrands(basket: Basket): BasketStrands {
  const normals = nodeNormals(basket.net, basket.positions);
  const drawn = { ...basket, positions: drawnPlaces(basket) };
  const stakes = stakeStrands(drawn, normals);
  return { stakes, weavers: weaverStrands(drawn, normals), base: flatRows(drawn, stakes) };
}
