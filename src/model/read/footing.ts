/** What the basket stands on. (`!`: typed arrays in a hot loop.) */
import { baseSize, isRound } from '../../plan/baseSize.ts';
import type { Plan } from '../../plan/schema.ts';
import type { Net } from '../net/net.ts';
import { midSideEnds } from './midSides.ts';
import { underside } from './underside.ts';

/** How a basket stands. Lengths mm. */
export interface Footing {
  /** Nodes that touch the table, and in how many separate places they do. */
  readonly contacts: readonly number[];
  readonly feet: number;
  /**
   * How far the corners stand below the middles of the base's edges (middle lines); 0 where they
   * do not, and on a round base, which has none.
   */
  readonly footHeight: number;
  /** Clear height under the middle of the base. */
  readonly centreClearance: number;
  /** How far the base hangs below its corners; 0 where it does not. */
  readonly hang: number;
  /** Length and width of what touches the table over those of the base. */
  readonly stance: { readonly length: number; readonly width: number };
}

/** A node this share of the base's diagonal over the table touches it: a table is not that even. */
export const touching = 0.002;

/** Reads the footing off a standing basket (`positions`: x, y, z of each node). */
export function footing(plan: Plan, net: Net, positions: Float64Array): Footing {
  const { length, width } = baseSize(plan.base);
  const under = underside(plan, net, positions);
  const contacts: number[] = [];
  const limit = touching * Math.hypot(length, width);
  for (let node = 0; node < under.length; node++) if (under[node]! <= limit) contacts.push(node);

  const height = Float64Array.from(under, (_, node) => positions[3 * node + 2]!);
  const corners = cornerHeights(net, height);
  const mean = (values: readonly number[]) =>
    values.reduce((sum, value) => sum + value, 0) / values.length;
  const middles = midSideEnds(net.ends).map((ends) =>
    mean(ends.map((e) => height[net.ends[e]!.nodes[0]!]!)),
  );
  const lowest = height.subarray(0, net.baseNodeCount).reduce((low, z) => Math.min(low, z));
  return {
    contacts,
    feet: clusters(contacts, net),
    footHeight: isRound(plan.base) ? 0 : Math.max(0, mean(middles) - mean(corners)),
    centreClearance: Math.max(0, mean(middleOfBase(net).map((node) => under[node]!))),
    hang: Math.max(0, mean(corners) - lowest),
    stance: {
      length: extent(contacts, positions, 0) / length,
      width: extent(contacts, positions, 1) / width,
    },
  };
}

/** Height of the corners of the base: the lowest of the crossing and the two edges beside it. */
function cornerHeights({ ends, frame }: Net, height: Float64Array): number[] {
  const corners: number[] = [];
  ends.forEach((end, e) => {
    const next = ends[(e + 1) % ends.length]!;
    if (end.side === next.side) return;
    // The first corner that is passed is the second one of the frame.
    const crossing = frame[(corners.length + 1) % 4]!;
    corners.push(Math.min(height[crossing]!, height[end.nodes[0]!]!, height[next.nodes[0]!]!));
  });
  return corners;
}

/** The crossings nearest the middle of the flat base: one, two or four. */
function middleOfBase({ start, baseNodeCount }: Net): number[] {
  const off = (node: number) => Math.hypot(start[3 * node]!, start[3 * node + 1]!);
  const nodes = Array.from({ length: baseNodeCount }, (_, node) => node);
  const least = nodes.reduce((low, node) => Math.min(low, off(node)), Number.POSITIVE_INFINITY);
  return nodes.filter((node) => off(node) <= least * (1 + 1e-9) + 1e-9);
}

/** Number of groups of nodes that hang together over the net's cells. */
function clusters(nodes: readonly number[], net: Net): number {
  const group = new Int32Array(net.nodeCount).fill(-1);
  for (const node of nodes) group[node] = node;
  const root = (node: number): number => {
    let at = node;
    while (group[at]! !== at) at = group[at]!;
    return at;
  };
  let count = nodes.length;
  const join = (a: number, b: number) => {
    if (group[a]! < 0 || group[b]! < 0) return;
    const [p, q] = [root(a), root(b)];
    if (p === q) return;
    group[Math.max(p, q)] = Math.min(p, q);
    count--;
  };
  // Nodes of one cell stand together, across either diagonal.
  for (const [cells, corners] of [
    [net.quads, 4],
    [net.triangles, 3],
  ] as const) {
    for (let i = 0; i < cells.length; i += corners) {
      for (let p = 1; p < corners; p++) {
        for (let q = 0; q < p; q++) join(cells[i + p]!, cells[i + q]!);
      }
    }
  }
  return count;
}

function extent(nodes: readonly number[], positions: Float64Array, axis: 0 | 1): number {
  let least = Number.POSITIVE_INFINITY;
  let most = Number.NEGATIVE_INFINITY;
  for (const node of nodes) {
    least = Math.min(least, positions[3 * node + axis]!);
    most = Math.max(most, positions[3 * node + axis]!);
  }
  return Math.max(0, most - least);
}
