/** Every end as the maker handles it. (`!`: typed arrays in a hot loop.) */
import type { Plan } from '../../plan/schema.ts';
import type { StakeReading } from '../basket.ts';
import type { Net, Stake } from '../net/net.ts';
import { tightestBend } from './bend.ts';

/**
 * One reading an end. Its path runs from the base's edge over rows 1 … R (point k is row k) to the
 * top of the wall, half a pitch above the last row. Its length is that of the strand, which does not
 * stretch: half of the base, the wall and the tuck. A split or added end needs as much as its stake.
 */
export function stakeReadings(plan: Plan, net: Net, positions: Float64Array): StakeReading[] {
  const wall = net.rows.reduce((sum, { pitch }) => sum + pitch, 0);
  const pair = pairedEnd(net);
  const creased = plan.base.upsett === 'creased';
  return net.ends.map((end, e) => {
    const stake = net.stakes[end.stake]!;
    const whole = e === pair ? stakeAt(net, end.nodes[0]!) : stake;
    // Half of a stake that crosses the base, all of one that starts in it.
    const inBase = baseLength(whole) / (whole.ends.includes(-1) ? 1 : 2);
    return {
      end: e,
      side: end.side,
      lengthNeeded: inBase + wall + plan.allowances.tuck,
      tightestBend: tightestBend(stake, stake.ends[0] === e ? 0 : 1, positions, creased),
      path: path(net, e, positions),
    };
  });
}

/** Length of a stake that lies in the base, edge to edge or from where it starts, mm. */
export function baseLength({ edge: [from, to], rest, nodes }: Stake): number {
  let length = 0;
  for (let at = Math.max(from, 0); at < (to < 0 ? nodes.length - 1 : to); at++) length += rest[at]!;
  return length;
}

/** The second of two ends that leave the base at one place (a split stake, or one added); −1 if none. */
export function pairedEnd({ ends }: Net): number {
  return ends.findIndex((end, e) => e > 0 && end.nodes[0] === ends[e - 1]!.nodes[0]);
}

/** The first stake that leaves the base's edge at `node`. */
export function stakeAt(net: Net, node: number): Stake {
  const stake = net.stakes.find(
    ({ nodes, edge }) => nodes[edge[0]] === node || nodes[edge[1]] === node,
  );
  if (!stake) throw new RangeError(`node is ${node}, allowed one on the edge of the base`);
  return stake;
}

function path(net: Net, e: number, x: Float64Array): [number, number, number][] {
  const { nodes } = net.ends[e]!;
  const points = Array.from(nodes, (node): [number, number, number] => [
    x[3 * node]!,
    x[3 * node + 1]!,
    x[3 * node + 2]!,
  ]);
  return [...points, topOf(points.at(-2)!, points.at(-1)!, net.rows.at(-1)!.pitch / 2)];
}

type Point = readonly [number, number, number];

/** The point `beyond` mm past `last`, straight on from `before`. */
function topOf(before: Point, last: Point, beyond: number): [number, number, number] {
  const [x, y, z] = [last[0] - before[0], last[1] - before[1], last[2] - before[2]];
  const share = beyond / (Math.hypot(x, y, z) + 1e-12);
  return [last[0] + share * x, last[1] + share * y, last[2] + share * z];
}
