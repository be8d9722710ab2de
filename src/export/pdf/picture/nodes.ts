import { nodeNormals } from '../../../mesh/surface.ts';
import type { Basket } from '../../../model/basket.ts';
import type { Vector } from './camera.ts';

/** Places and outward normals of the basket's nodes as vectors. */
export interface Nodes {
  readonly at: (node: number) => Vector;
  readonly normal: (node: number) => Vector;
}

/** The nodes of the settled basket. */
export function nodesOf({ net, positions }: Basket): Nodes {
  const normals = nodeNormals(net, positions);
  const vector = (from: Float64Array, node: number): Vector => [
    from[3 * node] ?? 0,
    from[3 * node + 1] ?? 0,
    from[3 * node + 2] ?? 0,
  ];
  return { at: (node) => vector(positions, node), normal: (node) => vector(normals, node) };
}
