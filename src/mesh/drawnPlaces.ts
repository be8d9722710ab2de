/**
 * Where the nodes are drawn. The net has strands without thickness: two things that it may do and strands
 * may not are put right here, by a millimetre or so.
 * Hot loops over typed arrays: `!` says that an index is inside.
 */
import type { Basket } from '../model/basket.ts';
import { clearance } from './room.ts';

/** Places of all nodes, x, y, z, mm. */
export function drawnPlaces(basket: Basket): Float64Array {
  const places = Float64Array.from(basket.positions);
  if (basket.plan.base.kind === 'mat') drawIn(basket, places);
  part(basket, places);
  return places;
}

/**
 * The outermost crossings of a mat lie about a thickness further in, so that the stakes that turn up
 * round the edge stay in the wall.
 */
function drawIn({ net, positions }: Basket, places: Float64Array): void {
  for (const stake of net.stakes) {
    if (stake.part === 'added') continue;
    for (const [side, inward] of [
      [0, 1],
      [1, -1],
    ] as const) {
      const edge = stake.edge[side];
      if (edge < 0) continue;
      const at = 3 * stake.nodes[edge + inward]!;
      const next = 3 * stake.nodes[edge + 2 * inward]!;
      const way = [0, 1, 2].map((axis) => positions[next + axis]! - positions[at + axis]!);
      const size = Math.hypot(...way);
      const on = size > 0 ? Math.min(0.3, (1.1 * stake.strand.thickness) / size) : 0;
      for (let axis = 0; axis < 3; axis += 1) places[at + axis]! += on * way[axis]!;
    }
  }
}

/** Two ends that start from one place keep room for the weaver to pass between them. */
function part({ net, plan, positions }: Basket, places: Float64Array): void {
  net.ends.forEach(({ nodes, width }, end) => {
    const next = net.ends[(end + 1) % net.ends.length]!;
    if (next.nodes === nodes || next.nodes[0] !== nodes[0]) return;
    for (let row = 1; row < nodes.length; row += 1) {
      const [a, b] = [3 * nodes[row]!, 3 * next.nodes[row]!];
      const way = [0, 1, 2].map((axis) => positions[b + axis]! - positions[a + axis]!);
      const apart = Math.hypot(...way);
      const wanted = 0.5 * width + clearance(plan, net.rows[row]!.band);
      if (apart >= wanted) return;
      const on = apart > 0 ? (wanted / apart - 1) / 2 : 0;
      for (let axis = 0; axis < 3; axis += 1) {
        places[a + axis]! -= on * way[axis]!;
        places[b + axis]! += on * way[axis]!;
      }
    }
  });
}
