import type { Net } from '../net/net.ts';
import { share } from '../net/smoothLength.ts';
import type { Fold } from './fold.ts';

/**
 * The net as flat lists of what carries energy, ready for the hot loops. Mirror images are left out:
 * an element stands for all its images, and `…Weight` says how many that is.
 */
export interface Elements {
  /** Stake segments: node pairs, rest length mm, weight. */
  readonly segment: { readonly nodes: Int32Array; readonly rest: Float64Array; readonly weight: Float64Array };
  /** Springs (diagonals and spacings): node pairs, rest length mm, stiffness (weight included). */
  readonly spring: { readonly nodes: Int32Array; readonly rest: Float64Array; readonly stiffness: Float64Array };
  /** Bends of stakes at a node: node triples, both lengths mm, stiffness EI/l̄ (weight included). */
  readonly bend: {
    readonly nodes: Int32Array;
    readonly before: Float64Array;
    readonly after: Float64Array;
    readonly stiffness: Float64Array;
  };
  /** The centre lift: nodes, weights and height held (see Net.lift), or null. */
  readonly lift: Net['lift'];
  /** Rows 1 … R as loops one after another; `first[r]` is where row r + 1 starts. */
  readonly loop: {
    readonly first: Int32Array;
    readonly nodes: Int32Array;
    /** Share of the turn at the segment's first and second node (see smoothLength). */
    readonly shareA: Float64Array;
    readonly shareB: Float64Array;
    readonly segmentWeight: Float64Array;
    readonly turnWeight: Float64Array;
    /** B/l̄ at the node, weight left out. */
    readonly stiffness: Float64Array;
    /** Length of the turn vector the weaver is set to, and the node below that tells which way is up. */
    readonly hold: Float64Array;
    readonly below: Int32Array;
    /** Target length of each loop, mm. */
    readonly target: Float64Array;
  };
  /** Penalty on length residuals, in stiffness units (force over Young's modulus, per mm). */
  readonly penalty: number;
  /** Largest tension kept, which makes a plan that cannot be met a compromise and not a blow-up. */
  readonly tensionCap: number;
}

/**
 * Weak stiffnesses in terms of bending one strand over one cell.
 *
 * Racking: a crossing of packed strands turns against friction; its couple is taken as that of
 * bending the weaver over one spacing (B_w/l). Over a cell p high and l wide a small rack γ lengthens
 * a diagonal d by γ·p·l/d, so the spring is B_w/l ÷ (2·(p·l/d)²) each.
 * Sliding: an end is kept in its place along the row by the same crossings, k = 2·B_w/l³.
 * Halving or doubling both moves the rim of a straight square basket by under 0.5 % (see tests).
 */
const rackShare = 1;
const slideShare = 2;
/**
 * Penalty over the stiffest bending term. Weak on purpose: the tensions make the lengths exact, and a
 * stiff penalty bends the valley that the steps go along (settle.ts has what was measured).
 */
const penaltyShare = 5;

/** Lists the elements of a net. `set` (0 … 1) is the share of their curvature the stakes take as rest. */
export function elements(net: Net, folded: Fold, set: number): Elements {
  const weigh = weigher(folded, net.nodeCount);
  const segment = lists();
  const bend = lists();
  let stiffest = 0;
  for (const stake of net.stakes) {
    for (let at = 0; at + 1 < stake.nodes.length; at++) {
      const pair = [stake.nodes[at]!, stake.nodes[at + 1]!];
      const weight = weigh(pair);
      if (weight > 0) segment.add(pair, [stake.rest[at]!, weight]);
    }
    for (let at = 1; at + 1 < stake.nodes.length; at++) {
      const triple = [stake.nodes[at - 1]!, stake.nodes[at]!, stake.nodes[at + 1]!];
      const weight = weigh(triple);
      const [before, after] = [stake.rest[at - 1]!, stake.rest[at]!];
      const around = (before + after) / 2;
      const stiffness = ((1 - set) * stake.stiffness[at]!) / around;
      stiffest = Math.max(stiffest, stake.stiffness[at]! / around ** 3);
      if (weight > 0 && stiffness > 0) {
        bend.add(triple, [before, after, weight * stiffness]);
      }
    }
  }
  const spring = springs(net, weigh);
  const loop = loops(net, weigh);
  for (let i = 0; i < loop.nodes.length; i++) stiffest = Math.max(stiffest, loop.stiff3[i]!);
  const penalty = penaltyShare * stiffest;
  const shortest = net.rows.reduce((p, row) => (row.pitch > 0 ? Math.min(p, row.pitch) : p), 1e9);
  return {
    segment: {
      nodes: Int32Array.from(segment.nodes),
      rest: segment.column(0),
      weight: segment.column(1),
    },
    spring: {
      nodes: Int32Array.from(spring.nodes),
      rest: spring.column(0),
      stiffness: spring.column(1),
    },
    bend: {
      nodes: Int32Array.from(bend.nodes),
      before: bend.column(0),
      after: bend.column(1),
      stiffness: bend.column(2),
    },
    lift: net.lift,
    loop,
    penalty,
    tensionCap: penalty * shortest,
  };
}

/** Diagonals of the cells and spacings of the ends. */
function springs(net: Net, weigh: (nodes: readonly number[]) => number) {
  const spring = lists();
  const add = (pair: readonly number[], rest: number, stiffness: number) => {
    const weight = weigh(pair);
    if (weight > 0 && stiffness > 0) spring.add(pair, [rest, weight * stiffness]);
  };
  const weaver = net.rows[1]?.stiffness ?? 1;
  for (let cell = 0; 4 * cell < net.quads.length; cell++) {
    const [a, b, c, d] = net.quads.subarray(4 * cell, 4 * cell + 4) as unknown as number[];
    const diagonal = net.diagonals[2 * cell]!;
    const wide = distance(net.start, a!, b!);
    const high = distance(net.start, b!, c!);
    const reach = (wide * high) / diagonal;
    const stiffness = (rackShare * weaver) / Math.max(wide, high) / (2 * reach * reach);
    add([a!, c!], diagonal, stiffness);
    add([b!, d!], diagonal, stiffness);
  }
  for (const row of net.rows.slice(1)) {
    const mean = row.girth / row.nodes.length;
    const stiffness = (slideShare * row.stiffness) / mean ** 3;
    row.nodes.forEach((node, j) => {
      const next = row.nodes[(j + 1) % row.nodes.length]!;
      add([node, next], row.spacing[j]!, stiffness * row.grip[j]!);
    });
  }
  return spring;
}

function loops(net: Net, weigh: (nodes: readonly number[]) => number) {
  const rows = net.rows.slice(1);
  const count = rows.reduce((sum, row) => sum + row.nodes.length, 0);
  const first = new Int32Array(rows.length + 1);
  const nodes = new Int32Array(count);
  const below = new Int32Array(count);
  const column = () => new Float64Array(count);
  const [shareA, shareB, segmentWeight, turnWeight] = [column(), column(), column(), column()];
  const [stiffness, stiff3, hold] = [column(), column(), column()];
  let at = 0;
  rows.forEach((row, r) => {
    first[r] = at;
    const n = row.nodes.length;
    for (let j = 0; j < n; j++, at++) {
      const next = (j + 1) % n;
      const before = (j + n - 1) % n;
      nodes[at] = row.nodes[j]!;
      below[at] = net.ends[j]!.nodes[r]!;
      shareA[at] = share(row.spacing, j, j);
      shareB[at] = share(row.spacing, j, next);
      segmentWeight[at] = weigh([row.nodes[j]!, row.nodes[next]!]);
      turnWeight[at] = weigh([row.nodes[before]!, row.nodes[j]!, row.nodes[next]!]);
      const around = 0.5 * (row.spacing[j]! + row.spacing[before]!);
      stiffness[at] = row.stiffness / around;
      stiff3[at] = row.stiffness / (row.girth / n) ** 3;
      hold[at] = 2 * Math.sin(row.hold[j]! / 2);
    }
  });
  first[rows.length] = at;
  const target = Float64Array.from(rows, (row) => row.girth - row.cornerLength);
  return {
    first,
    nodes,
    below,
    shareA,
    shareB,
    segmentWeight,
    turnWeight,
    stiffness,
    stiff3,
    hold,
    target,
  };
}

/** Number of mirror images an element stands for, or 0 when another of its images stands for it. */
function weigher(folded: Fold, nodeCount: number): (nodes: readonly number[]) => number {
  const key = (nodes: readonly number[]): number => {
    const [a = 0, b = 0, c] = nodes;
    if (c === undefined) return Math.min(a, b) * nodeCount + Math.max(a, b);
    return (b * nodeCount + Math.min(a, c)) * nodeCount + Math.max(a, c);
  };
  return (nodes) => {
    const own = key(nodes);
    const seen = [own];
    for (const image of folded.images) {
      const other = key(nodes.map((node) => image[node]!));
      if (other < own) return 0;
      if (!seen.includes(other)) seen.push(other);
    }
    return seen.length;
  };
}

function lists() {
  const nodes: number[] = [];
  const values: number[] = [];
  let width = 0;
  return {
    nodes,
    add(group: readonly number[], row: readonly number[]) {
      nodes.push(...group);
      values.push(...row);
      width = row.length;
    },
    column: (index: number) =>
      Float64Array.from({ length: width > 0 ? values.length / width : 0 }, (_, i) => values[i * width + index]!),
  };
}

function distance(points: Float64Array, a: number, b: number): number {
  return Math.hypot(
    points[3 * a]! - points[3 * b]!,
    points[3 * a + 1]! - points[3 * b + 1]!,
    points[3 * a + 2]! - points[3 * b + 2]!,
  );
}
