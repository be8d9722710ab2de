/** How sharply a stake is bent. (`!`: typed arrays in a hot loop.) */
import type { Stake } from '../net/net.ts';

/** Radius given to what is straight, mm: finite, so that it can be written to a file. */
const straight = 1e6;

/**
 * Smallest radius of bend of one half of a stake, mm, from the middle of the base to the rim: at each
 * node the mean length of the two segments over the turn between them. A crease is a fold and not a
 * bend, so with a `creased` upsett the node on the base's edge does not count; a rolled one is taken over
 * the edge and the node on each side of it, since the net puts most of its turn on the one node.
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
    const atEdge = at === edge[0] || at === edge[1];
    if (atEdge && creased) continue;
    const reach = atEdge && at > 1 && at + 2 < nodes.length ? 1 : 0;
    const curvature = meanCurvature(positions, nodes, at - reach, at + reach);
    if (curvature > sharpest) sharpest = curvature;
  }
  return 1 / Math.max(sharpest, 1 / straight);
}

/** Turns at nodes `from` … `to` of a chain over the lengths that belong to them, 1/mm. */
function meanCurvature(x: Float64Array, nodes: Int32Array, from: number, to: number): number {
  let turns = 0;
  let lengths = 0;
  for (let at = from; at <= to; at++) {
    const a = 3 * nodes[at - 1]!;
    const b = 3 * nodes[at]!;
    const c = 3 * nodes[at + 1]!;
    const ux = x[b]! - x[a]!;
    const uy = x[b + 1]! - x[a + 1]!;
    const uz = x[b + 2]! - x[a + 2]!;
    const vx = x[c]! - x[b]!;
    const vy = x[c + 1]! - x[b + 1]!;
    const vz = x[c + 2]! - x[b + 2]!;
    const wx = uy * vz - uz * vy;
    const wy = uz * vx - ux * vz;
    const wz = ux * vy - uy * vx;
    turns += Math.atan2(Math.sqrt(wx * wx + wy * wy + wz * wz), ux * vx + uy * vy + uz * vz);
    lengths += 0.5 * Math.sqrt(ux * ux + uy * uy + uz * uz);
    lengths += 0.5 * Math.sqrt(vx * vx + vy * vy + vz * vz);
  }
  return turns / (lengths + 1e-12);
}
