/**
 * The wall as one plain surface of a band for each row: what a pointer is tried against, a
 * thirtieth of the triangles of the strands themselves.
 * Hot loops over typed arrays: `!` says that an index is inside.
 */
import type { Basket } from '../model/basket.ts';

export interface WallBands {
  /** x, y, z of each vertex, mm, z up: R + 1 rings of one vertex an end. */
  readonly positions: Float32Array;
  /** Three vertices a triangle, outward; row `k` has the `trianglesPerRow` from (k − 1) times that. */
  readonly indices: Uint32Array;
  readonly trianglesPerRow: number;
}

/** Bands from half-way to the row below to half-way to the row above; the base edge ends row 1. */
export function wallBands({ net, positions }: Basket): WallBands {
  const ends = net.ends.length;
  const rows = net.rows.length - 1;
  const ring = new Float32Array(3 * ends * (rows + 1));
  net.ends.forEach(({ nodes }, end) => {
    for (let edge = 0; edge <= rows; edge += 1) {
      const [under, over] = [3 * nodes[edge]!, 3 * (nodes[edge + 1] ?? nodes[edge]!)];
      const share = edge === 0 ? 0 : 0.5;
      const beneath = 3 * nodes[Math.max(0, edge - 1)]!;
      for (let axis = 0; axis < 3; axis += 1) {
        const here = positions[under + axis]!;
        const step =
          edge === rows ? here - positions[beneath + axis]! : positions[over + axis]! - here;
        ring[3 * (edge * ends + end) + axis] = here + share * step;
      }
    }
  });
  const indices = new Uint32Array(6 * ends * rows);
  let at = 0;
  for (let row = 0; row < rows; row += 1) {
    for (let end = 0; end < ends; end += 1) {
      const next = (end + 1) % ends;
      const [a, b, c, d] = [
        row * ends + end,
        row * ends + next,
        (row + 1) * ends + next,
        (row + 1) * ends + end,
      ];
      indices.set([a, b, c, a, c, d], at);
      at += 6;
    }
  }
  return { positions: ring, indices, trianglesPerRow: 2 * ends };
}
