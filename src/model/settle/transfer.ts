import type { Net } from '../net/net.ts';
import { pick } from './fold.ts';
import { pairKey } from './weigher.ts';
import type { Work } from './work.ts';

/**
 * Starts `to`, a net with an odd end, from the settled work on the same plan without it: base and base
 * edge are the same nodes, and each row's ends are shared out along the settled loop in the new net's
 * spacing, the pair of ends standing where the single one stood. Tensions are carried over too.
 */
export function startWithOddEnd(from: Work, to: Work): void {
  to.lead.set(pick(to.folded, withOddEnd(from.net, from.x, to.net)));
  to.tensions.loop.set(from.tensions.loop);
  to.tensions.lift.set(from.tensions.lift);
  const tension = tensionByPair(from);
  const { nodes } = to.elements.segment;
  const key = new Map<number, number>();
  for (const [s, stake] of from.net.stakes.entries()) {
    const twin = to.net.stakes[s]!.nodes;
    for (let at = 0; at + 1 < stake.nodes.length; at++) {
      const own =
        tension.get(pairKey(from.net.nodeCount, stake.nodes[at]!, stake.nodes[at + 1]!)) ?? 0;
      key.set(pairKey(to.net.nodeCount, twin[at]!, twin[at + 1]!), own);
    }
  }
  for (let i = 0; i < to.tensions.segment.length; i++) {
    to.tensions.segment[i] =
      key.get(pairKey(to.net.nodeCount, nodes[2 * i]!, nodes[2 * i + 1]!)) ?? 0;
  }
}

/** Tension of every stake segment, mirror images included, by its pair of nodes. */
function tensionByPair({
  net,
  folded,
  elements: { segment },
  tensions,
}: Work): Map<number, number> {
  const tension = new Map<number, number>();
  for (let i = 0; i < segment.rest.length; i++) {
    const a = segment.nodes[2 * i]!;
    const b = segment.nodes[2 * i + 1]!;
    tension.set(pairKey(net.nodeCount, a, b), tensions.segment[i]!);
    for (const image of folded.images) {
      tension.set(pairKey(net.nodeCount, image[a]!, image[b]!), tensions.segment[i]!);
    }
  }
  return tension;
}

/** x, y, z for each node of `to`, mm, from the shape `x` of `from`. */
function withOddEnd(from: Net, x: Float64Array, to: Net): Float64Array {
  const points = new Float64Array(3 * to.nodeCount);
  const shared = to.baseNodeCount + (to.rows[0]?.nodes.length ?? 0);
  points.set(x.subarray(0, 3 * shared));
  const pair = to.ends.findIndex((end, e) => end.nodes[0] === to.ends[e + 1]?.nodes[0]);
  for (let k = 1; k < to.rows.length; k++) {
    const oldNodes = from.rows[k]!.nodes;
    const row = to.rows[k]!;
    const n = oldNodes.length;
    const along = arcs(oldNodes, x);
    const length = along[n]!;
    const planned = cumulative(row.spacing, pair, row.spacing[pair]! / 2);
    const before = cumulative(from.rows[k]!.spacing, pair, 0);
    row.nodes.forEach((node, j) => {
      const old = j > pair ? j - 1 : j;
      // Each end keeps its own place, moved by what the new end takes up between the planned spacings.
      const s = along[old]! + (planned[j]! - before[old]!) * length;
      loopPoint(oldNodes, x, along, ((s % length) + length) % length, points, node);
    });
  }
  return points;
}

/** Planned place of each end, from end `from` less `less`, as a share of the whole round: −½ … ½. */
function cumulative(spacing: Float64Array, from: number, less: number): Float64Array {
  const total = spacing.reduce((sum, length) => sum + length, 0);
  const place = new Float64Array(spacing.length);
  let at = -less;
  for (let step = 0; step < spacing.length; step++) {
    const j = (from + step) % spacing.length;
    place[j] = at / total - (at > total / 2 ? 1 : 0);
    at += spacing[j]!;
  }
  return place;
}

/** Distance along the chords from node 0 to each node, and right round as the last value. */
function arcs(nodes: Int32Array, x: Float64Array): Float64Array {
  const along = new Float64Array(nodes.length + 1);
  for (let j = 0; j < nodes.length; j++) {
    const a = 3 * nodes[j]!;
    const b = 3 * nodes[j + 1 < nodes.length ? j + 1 : 0]!;
    along[j + 1] =
      along[j]! + Math.hypot(x[b]! - x[a]!, x[b + 1]! - x[a + 1]!, x[b + 2]! - x[a + 2]!);
  }
  return along;
}

/** The point at distance `s` along a loop, on the Catmull–Rom curve through its nodes. */
function loopPoint(
  nodes: Int32Array,
  x: Float64Array,
  along: Float64Array,
  s: number,
  to: Float64Array,
  node: number,
): void {
  const n = nodes.length;
  let i = 0;
  while (i + 1 < n && along[i + 1]! <= s) i++;
  const t = (s - along[i]!) / Math.max(along[i + 1]! - along[i]!, 1e-9);
  const [p, q, r, v] = [-1, 0, 1, 2].map((d) => 3 * nodes[(i + d + n) % n]!) as [
    number,
    number,
    number,
    number,
  ];
  for (let d = 0; d < 3; d++) {
    const [a, b, c, e] = [x[p + d]!, x[q + d]!, x[r + d]!, x[v + d]!];
    const bend = 2 * a - 5 * b + 4 * c - e;
    const twist = 3 * (b - c) + e - a;
    to[3 * node + d] = b + 0.5 * t * (c - a + t * (bend + t * twist));
  }
}
