/** How sharply a stake is bent. (`!`: typed arrays in a hot loop.) */
import type { Stake } from '../net/net.ts';

/** Radius given to what is straight, mm: finite, so that it can be written to a file. */
const straight = 1e6;

/**
 * Smallest radius of bend of one half of a stake, mm, from the middle of the base to the rim: at each
 * node the mean length of the two segments over the turn between them. A crease is a fold and not a
 * bend, so with a `creased` upsett the node on the base's edge does not count.
 *
 * @param half 0 for the half that carries the stake's first end, 1 for the other
 */
export function tightestBend(
  stake: Stake,
  half: 0 | 1,
  positions: Float64Array,
  creased: boolean,
): number {
  const { nodes, edge } = stake;
  const middle = edge[0] < 0 ? 0 : (edge[0] + edge[1]) >> 1;
  const from = half === 0 ? 1 : Math.max(1, middle);
  const to = half === 0 ? middle : nodes.length - 2;
  let sharpest = 0;
  for (let at = from; at <= to; at++) {
    if (creased && (at === edge[0] || at === edge[1])) continue;
    const curvature = turnOverLength(positions, nodes[at - 1]!, nodes[at]!, nodes[at + 1]!);
    if (curvature > sharpest) sharpest = curvature;
  }
  return 1 / Math.max(sharpest, 1 / straight);
}

/** Turn at the middle of three nodes, radians, over the mean of the two lengths, mm. */
function turnOverLength(x: Float64Array, before: number, node: number, after: number): number {
  const a = 3 * before;
  const b = 3 * node;
  const c = 3 * after;
  const ux = x[b]! - x[a]!;
  const uy = x[b + 1]! - x[a + 1]!;
  const uz = x[b + 2]! - x[a + 2]!;
  const vx = x[c]! - x[b]!;
  const vy = x[c + 1]! - x[b + 1]!;
  const vz = x[c + 2]! - x[b + 2]!;
  const u = Math.sqrt(ux * ux + uy * uy + uz * uz);
  const v = Math.sqrt(vx * vx + vy * vy + vz * vz);
  const wx = uy * vz - uz * vy;
  const wy = uz * vx - ux * vz;
  const wz = ux * vy - uy * vx;
  const turn = Math.atan2(Math.sqrt(wx * wx + wy * wy + wz * wz), ux * vx + uy * vy + uz * vz);
  return (2 * turn) / (u + v + 1e-12);
}
