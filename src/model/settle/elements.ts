import type { Net } from '../net/net.ts';
import type { Fold } from './fold.ts';
import { loops } from './loopElements.ts';
import type { Weigher } from './weigher.ts';
import { weigher } from './weigher.ts';

/**
 * The net as flat lists of what carries energy, ready for the hot loops. Mirror images are left out:
 * an element stands for all its images, and `…Weight` says how many that is.
 */
export interface Elements {
  /** Stake segments: node pairs, rest length mm, weight. */
  readonly segment: {
    readonly nodes: Int32Array;
    readonly rest: Float64Array;
    readonly weight: Float64Array;
  };
  /** Springs (diagonals and spacings): node pairs, rest length mm, stiffness (weight included). */
  readonly spring: {
    readonly nodes: Int32Array;
    readonly rest: Float64Array;
    readonly stiffness: Float64Array;
  };
  /**
   * Bends of stakes at a node: node triples, both lengths mm, stiffness EI/l̄ (weight included), and the
   * turn κ·l̄ the stake is set to, along the base's downward normal.
   */
  readonly bend: {
    readonly nodes: Int32Array;
    readonly before: Float64Array;
    readonly after: Float64Array;
    readonly stiffness: Float64Array;
    readonly natural: Float64Array;
  };
  /** The centre lift: nodes, weights and height held (see Net.lift), or null. */
  readonly lift: Net['lift'];
  /** Nodes that keep the base in its place, and the six ways it must not move (unit vectors over them). */
  readonly anchors: {
    readonly nodes: Int32Array;
    readonly ways: readonly Float64Array[];
    /** Where the start shape stands in each way. */
    readonly places: Float64Array;
  };
  /** Rows 1 … R, then the base's flat rows, as loops; `first[r]` is where row r + 1 starts. */
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
    /** Loops that are rows of the wall; those after them are flat rows, held by the penalty alone. */
    readonly strict: number;
    /** Target length of each loop, mm. */
    readonly target: Float64Array;
    /** Stiffness that keeps each loop's middle over the base's, force over Young's modulus per mm. */
    readonly upright: Float64Array;
  };
  /** Penalty on length residuals, in stiffness units (force over Young's modulus, per mm). */
  readonly penalty: number;
  /** Largest tension kept, which makes a plan that cannot be met a compromise and not a blow-up. */
  readonly tensionCap: number;
}

/**
 * Weak stiffnesses in terms of bending one strand over one cell.
 *
 * Racking: a crossing of packed strands turns against friction. In the base, where stakes are trued and
 * tight, its couple is taken as that of bending the weaver over one spacing (B_w/l); in the wall, where
 * a row slides along the stakes before it racks, a tenth of it. Over a cell p high and l wide a small rack
 * γ lengthens a diagonal d by γ·p·l/d, so the spring is share·B_w/l ÷ (2·(p·l/d)²) each. The whole of
 * B_w/l makes a high wall nearly isometric: over 5 + 13 stakes and 60 straight rows the rim drifts to
 * −11 … +8 % of a circle's width; with a tenth it is −3 … +1 %, with less it hardly changes. (On 9 + 9
 * stakes and 30 rows: within 1 % for all of these.)
 * Sliding: an end is kept in its place along the row by the same crossings, k = 2·B_w/l³ (five times
 * as much moves the rim by 0.02 %).
 * Upright: racked from side to side as a whole a wall has next to no stiffness of its own, and one odd end
 * would make it lean by a stake's width; the maker sees to it that it stands up. Each row's middle is kept
 * over the base's by E·B_w/l³ (a tenth as much gives the same lean to 0.01 mm).
 */
const rackShare = 0.1;
const baseRackShare = 1;
const slideShare = 2;
const uprightShare = 1;
/** Flat rows of an oval base hold their ends this many times as hard as a row of the wall does. */
const tieShare = 100;
/**
 * Penalty over the stiffest bending term. Weak on purpose: the tensions make the lengths exact, and a
 * stiff penalty bends the valley that the steps go along (settle.ts has what was measured).
 */
const penaltyShare = 5;
/** Tension cap over penalty × pitch: no tension of a plan that can be woven comes near it. */
const tensionShare = 1;

/** Lists the elements of a net. `set` (0 … 1) is the share of their curvature the stakes take as rest. */
export function elements(net: Net, folded: Fold, set: number): Elements {
  const weigh = weigher(folded, net.nodeCount);
  const { segment, bend, stiffest } = stakeElements(net, weigh, set);
  const { stiffest: stiffestRow, ...loop } = loops(net, weigh, uprightShare);
  const penalty = penaltyShare * Math.max(stiffest, stiffestRow);
  const shortest = net.rows.reduce((p, row) => (row.pitch > 0 ? Math.min(p, row.pitch) : p), 1e9);
  return {
    segment,
    spring: springs(net, weigh),
    bend,
    lift: net.lift,
    anchors: wholeMoves(net),
    loop,
    penalty,
    tensionCap: tensionShare * penalty * shortest,
  };
}

/** Segments and bends of the stakes, and the stiffest bend as a spring (EI over length cubed). */
function stakeElements(net: Net, weigh: Weigher, set: number) {
  const segment = { nodes: [] as number[], rest: [] as number[], weight: [] as number[] };
  const bend = {
    nodes: [] as number[],
    before: [] as number[],
    after: [] as number[],
    stiffness: [] as number[],
    natural: [] as number[],
  };
  let stiffest = 0;
  for (const { nodes, rest, stiffness, natural } of net.stakes) {
    for (let at = 0; at + 1 < nodes.length; at++) {
      const weight = weigh.pair(nodes[at]!, nodes[at + 1]!);
      if (weight > 0) {
        segment.nodes.push(nodes[at]!, nodes[at + 1]!);
        segment.rest.push(rest[at]!);
        segment.weight.push(weight);
      }
    }
    for (let at = 1; at + 1 < nodes.length; at++) {
      const around = (rest[at - 1]! + rest[at]!) / 2;
      stiffest = Math.max(stiffest, stiffness[at]! / around ** 3);
      const weight = weigh.triple(nodes[at - 1]!, nodes[at]!, nodes[at + 1]!);
      if (weight > 0 && stiffness[at]! > 0) {
        bend.nodes.push(nodes[at - 1]!, nodes[at]!, nodes[at + 1]!);
        bend.before.push(rest[at - 1]!);
        bend.after.push(rest[at]!);
        bend.stiffness.push((weight * (1 - set) * stiffness[at]!) / around);
        bend.natural.push(natural[at]! * around);
      }
    }
  }
  // A held width is kept like the length of a stake.
  const { nodes: held, length } = net.heldWidths;
  for (let i = 0; i < length.length; i++) {
    const weight = weigh.pair(held[2 * i]!, held[2 * i + 1]!);
    if (weight === 0) continue;
    segment.nodes.push(held[2 * i]!, held[2 * i + 1]!);
    segment.rest.push(length[i]!);
    segment.weight.push(weight);
  }
  return {
    segment: {
      nodes: Int32Array.from(segment.nodes),
      rest: Float64Array.from(segment.rest),
      weight: Float64Array.from(segment.weight),
    },
    bend: {
      nodes: Int32Array.from(bend.nodes),
      before: Float64Array.from(bend.before),
      after: Float64Array.from(bend.after),
      stiffness: Float64Array.from(bend.stiffness),
      natural: Float64Array.from(bend.natural),
    },
    stiffest,
  };
}

/** Diagonals of the cells and spacings of the ends. */
function springs(net: Net, weigh: Weigher): Elements['spring'] {
  const nodes: number[] = [];
  const rest: number[] = [];
  const stiffness: number[] = [];
  const add = (a: number, b: number, length: number, k: number) => {
    const weight = weigh.pair(a, b);
    if (weight === 0) return;
    nodes.push(a, b);
    rest.push(length);
    stiffness.push(weight * k);
  };
  const weaver = net.rows[1]?.stiffness ?? 1;
  const { quads, diagonals, cells } = net;
  const wall = net.baseNodeCount + net.rows[0]!.nodes.length;
  for (let cell = 0; 4 * cell < quads.length; cell++) {
    const diagonal = diagonals[cell]!;
    const wide = cells[2 * cell]!;
    const high = cells[2 * cell + 1]!;
    const reach = (wide * high) / diagonal;
    const share = quads[4 * cell + 2]! < wall ? baseRackShare : rackShare;
    const k = (share * weaver) / Math.max(wide, high) / (2 * reach * reach);
    add(quads[4 * cell]!, quads[4 * cell + 2]!, diagonal, k);
    add(quads[4 * cell + 1]!, quads[4 * cell + 3]!, diagonal, k);
  }
  for (let r = 1; r < net.rows.length; r++) {
    const row = net.rows[r]!;
    const n = row.nodes.length;
    const k = (slideShare * row.stiffness) / (row.girth / n) ** 3;
    for (let j = 0; j < n; j++) {
      add(row.nodes[j]!, row.nodes[j + 1 < n ? j + 1 : 0]!, row.spacing[j]!, k * row.grip[j]!);
    }
  }
  const { nodes: tied, length } = net.ties;
  for (let i = 0; i < length.length; i++) {
    add(tied[2 * i]!, tied[2 * i + 1]!, length[i]!, (tieShare * weaver) / length[i]! ** 3);
  }
  return {
    nodes: Int32Array.from(nodes),
    rest: Float64Array.from(rest),
    stiffness: Float64Array.from(stiffness),
  };
}

/** The anchors' shifts along and turns about the three axes, from the start shape. */
function wholeMoves({ anchors, start }: Net): Elements['anchors'] {
  const moves: ((x: number, y: number) => readonly [number, number, number])[] = [
    () => [1, 0, 0],
    () => [0, 1, 0],
    () => [0, 0, 1],
    (_, y) => [0, 0, y],
    (x) => [0, 0, x],
    (x, y) => [-y, x, 0],
  ];
  const ways = moves.map((move) => {
    const way = Float64Array.from({ length: 3 * anchors.length }, (_, i) => {
      const node = 3 * anchors[(i / 3) | 0]!;
      return move(start[node]!, start[node + 1]!)[i % 3]!;
    });
    const length = Math.hypot(...way) || 1;
    return way.map((value) => value / length);
  });
  const places = Float64Array.from(ways, (way) =>
    way.reduce((sum, part, i) => sum + part * start[3 * anchors[(i / 3) | 0]! + (i % 3)]!, 0),
  );
  return { nodes: anchors, ways, places };
}
