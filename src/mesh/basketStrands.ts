/** All that a basket is made of, strand by strand, each with a name of its own. */
import type { Basket } from '../model/basket.ts';
import { stakeStrands } from './stakeStrands.ts';
import type { Strand } from './strandMesh.ts';
import { nodeNormals } from './surface.ts';
import { weaverStrands } from './weaverStrands.ts';

export interface NamedStrand {
  readonly name: string;
  readonly strand: Strand;
}

/** Stakes and weavers, going over and under each other. */
export function basketStrands(basket: Basket): readonly NamedStrand[] {
  const normals = nodeNormals(basket.net, basket.positions);
  const stakes = stakeStrands(basket, normals).map((strand, at) => {
    const { part = 'stake', index = at } = basket.net.stakes[at] ?? {};
    return { name: `${part === 'stake' ? '' : `${part} `}stake ${index + 1}`, strand };
  });
  const weavers = weaverStrands(basket, normals).map((strand, at) => ({
    name: `weaver ${at + 1}`,
    strand,
  }));
  return [...stakes, ...weavers];
}
