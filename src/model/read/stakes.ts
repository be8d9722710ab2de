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
  const creased = plan.base.upsett === 'creased';
  return net.ends.map((end, e) => {
    const stake = net.stakes[end.stake]!;
    const whole = stake.part === 'added' ? hostOf(net, end.nodes[0]!) : stake;
    return {
      end: e,
      side: end.side,
      lengthNeeded: baseLength(whole) / 2 + wall + plan.allowances.tuck,
      tightestBend: tightestBend(stake, stake.ends[0] === e ? 0 : 1, positions, creased),
      path: path(net, e, positions),
    };
  });
}

/** Length of a stake between the two edges of the base, mm. */
export function baseLength({ edge: [from, to], rest }: Stake): number {
  let length = 0;
  for (let at = from; at < to; at++) length += rest[at]!;
  return length;
}

/** The stake that leaves the base's edge at `node` and crosses the base. */
export function hostOf(net: Net, node: number): Stake {
  const host = net.stakes.find(
    ({ part, nodes, edge }) =>
      part !== 'added' && (nodes[edge[0]] === node || nodes[edge[1]] === node),
  );
  if (!host) throw new RangeError(`node is ${node}, allowed one on the edge of the base`);
  return host;
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
