/**
 * The basket as a line drawing: one side of it, as flat lines in millimetres, y up.
 * Hot loops over typed arrays: `!` says that an index is inside.
 */
import type { Basket } from '../model/basket.ts';
import { envelope } from './envelope.ts';
import type { FlatLine } from './flatLines.ts';
import { nearHalf, reversed, spread } from './flatLines.ts';
import { flatLoop } from './flatLoop.ts';
import { reachAt } from './profile.ts';
import { nodeNormals } from './surface.ts';

/** 'side': seen from the south, length across. 'end': seen from the east, width across. */
export type OutlineView = 'side' | 'end';

export interface Outline {
  readonly view: OutlineView;
  /** The outer edge of all that is seen, a closed line, counter-clockwise from its lower left. */
  readonly silhouette: FlatLine;
  /** The near half of each row, base edge (row 0) first, left to right. */
  readonly rows: readonly { readonly row: number; readonly line: FlatLine }[];
  /** The ends that stand on the near half, from the base edge to the top of the wall. */
  readonly stakes: readonly { readonly end: number; readonly line: FlatLine }[];
  /** The table's top, a little longer than the basket. */
  readonly table: FlatLine;
  /** Smallest and largest x and y of the silhouette, and how far apart they are. */
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
  /** Height of the wall, mm, as the summary has it; a smooth line from stake to stake may bulge a hair over it. */
  readonly wall: number;
}

/** The basket seen from its side or its end. */
export function outline(basket: Basket, view: OutlineView): Outline {
  const { net } = basket;
  const axis = view === 'side' ? 0 : 1;
  const { positions, ends, top } = toTheTop(basket);
  const flat = flatten(positions, axis);
  const rows = net.rows.map(({ nodes }) => flatLoop(positions, nodes, axis));
  const rim = flatLoop(positions, top, axis);
  const edges = outerEdges(
    basket,
    [...rows, rim],
    ends.map((nodes) => thereAndBack(nodes, flat)),
  );
  const stations = spread(edges.left[0] ?? 0, edges.right[0] ?? 0);
  const rimStations = spread(edges.left.at(-2) ?? 0, edges.right.at(-2) ?? 0);
  const silhouette = [
    ...envelope([rows[0] ?? [], ...baseLines(basket, flat)], stations, 'lower'),
    ...edges.right,
    ...reversed(envelope([rim], rimStations, 'upper')),
    ...reversed(edges.left),
  ];
  const size = extent(silhouette);
  const margin = 0.08 * size.width;
  return {
    view,
    silhouette,
    rows: rows.map((loop, row) => ({ row, line: nearHalf(loop) })),
    stakes: nearEnds(basket, ends, flat, axis),
    table: [size.left - margin, 0, size.right + margin, 0],
    ...size,
    wall: top.reduce((most, node) => Math.max(most, positions[3 * node + 2]!), 0),
  };
}

/** Nodes with one more for each end where the wall ends, half a pitch over the last row. */
interface ToTheTop {
  readonly positions: Float64Array;
  /** Nodes of each end, its top the last. */
  readonly ends: readonly Int32Array[];
  readonly top: Int32Array;
}

function toTheTop({ net, positions: nodes }: Basket): ToTheTop {
  const first = nodes.length / 3;
  const positions = new Float64Array(nodes.length + 3 * net.ends.length);
  positions.set(nodes);
  const ends = net.ends.map((end, at) => {
    const last = 3 * end.nodes.at(-1)!;
    const before = 3 * (end.nodes.at(-2) ?? end.nodes.at(-1)!);
    const way = [0, 1, 2].map((d) => nodes[last + d]! - nodes[before + d]!);
    const on = net.rows.at(-1)!.pitch / 2 / (Math.hypot(...way) || 1);
    way.forEach((step, d) => {
      positions[nodes.length + 3 * at + d] = nodes[last + d]! + on * step;
    });
    return Int32Array.of(...end.nodes, first + at);
  });
  return { positions, ends, top: Int32Array.from(ends, (end) => end.at(-1)!) };
}

/** x, y of each node seen along the other level axis. */
function flatten(positions: Float64Array, axis: 0 | 1): Float64Array {
  const flat = new Float64Array((2 * positions.length) / 3);
  for (let node = 0; 2 * node < flat.length; node += 1) {
    flat[2 * node] = positions[3 * node + axis]!;
    flat[2 * node + 1] = positions[3 * node + 2]!;
  }
  return flat;
}

/** Heights at which an edge is read. */
const edgeSteps = 96;

/**
 * The left and right edge from the table upward: at each height the outermost that any row reaches
 * there, moved out to the wall's outer face (half a stake and a weaver), up to the outermost point of
 * the wall's top, which is the last of the loops.
 */
function outerEdges(
  { net, plan }: Basket,
  loops: readonly number[][],
  stakes: readonly number[][],
) {
  const stake = net.stakes[0]?.strand.thickness ?? 0;
  const tips = loops.map(outermost);
  const faces = [...net.rows, net.rows.at(-1)!].map(
    ({ band }) => stake / 2 + (plan.bands[band]?.weaver.thickness ?? 0),
  );
  const edge = (side: 'left' | 'right') => {
    const sign = side === 'left' ? -1 : 1;
    // From tip to tip and back again: what the wall does between two level rows.
    const climb = tips.flatMap((tip) => tip[side]);
    const lines = [...loops, ...stakes, [...climb, ...reversed(climb)]];
    const top = tips.at(-1)?.[side] ?? [0, 0];
    const foot = lowest(loops, sign);
    const line = [foot[0] + sign * faces[0]!, foot[1]];
    let row = 0;
    for (let at = 1; at < edgeSteps; at += 1) {
      const y = foot[1] + ((top[1] - foot[1]) * at) / edgeSteps;
      while (row + 1 < tips.length && tips[row + 1]![side][1] <= y) row += 1;
      const reach = reachAt(lines, y);
      if (reach) line.push(reach[side] + sign * faces[row]!, y);
    }
    line.push(top[0] + sign * (faces.at(-1) ?? 0), top[1]);
    return line;
  };
  return { left: edge('left'), right: edge('right') };
}

/** The lowest point of the loops on the side of x = 0 that `sign` gives; of several the outermost. */
function lowest(loops: readonly number[][], sign: number): readonly [number, number] {
  let best: readonly [number, number] = [0, Number.POSITIVE_INFINITY];
  for (const loop of loops) {
    for (let at = 0; at < loop.length; at += 2) {
      const [x, y] = [loop[at]!, loop[at + 1]!];
      if (sign * x <= 0) continue;
      const level = Math.abs(y - best[1]) < 1e-3;
      if (level ? sign * x > sign * best[0] : y < best[1]) best = [x, y];
    }
  }
  return Number.isFinite(best[1]) ? best : [0, 0];
}

/** The leftmost and the rightmost point of a loop. */
function outermost(loop: readonly number[]) {
  let [low, high] = [0, 0];
  for (let at = 0; at < loop.length; at += 2) {
    if (loop[at]! < loop[low]!) low = at;
    if (loop[at]! > loop[high]!) high = at;
  }
  const point = (at: number) => [loop[at] ?? 0, loop[at + 1] ?? 0] as const;
  return { left: point(low), right: point(high) };
}

/** A line through nodes, there and back. */
function thereAndBack(nodes: Int32Array, flat: Float64Array): number[] {
  const line = Array.from(nodes).flatMap((node) => [flat[2 * node]!, flat[2 * node + 1]!]);
  return [...line, ...reversed(line)];
}

/** Each stake's part in the base. */
function baseLines({ net }: Basket, flat: Float64Array): number[][] {
  return net.stakes.map(({ nodes, edge }) => {
    const from = Math.max(0, edge[0]);
    const to = edge[1] < 0 ? nodes.length - 1 : edge[1];
    return Array.from(nodes.slice(from, to + 1)).flatMap((node) => [
      flat[2 * node]!,
      flat[2 * node + 1]!,
    ]);
  });
}

/** The ends whose wall faces the eye for the most part. */
function nearEnds(basket: Basket, ends: readonly Int32Array[], flat: Float64Array, axis: 0 | 1) {
  const normals = nodeNormals(basket.net, basket.positions);
  // the eye is at −y for the side view, at +x for the end view
  const towards = axis === 0 ? { axis: 1, sign: -1 } : { axis: 0, sign: 1 };
  return basket.net.ends.flatMap(({ nodes }, end) => {
    let facing = 0;
    for (const node of nodes) facing += towards.sign * normals[3 * node + towards.axis]!;
    if (!(facing > 0)) return [];
    const seen = Array.from(ends[end]!);
    return [{ end, line: seen.flatMap((node) => [flat[2 * node]!, flat[2 * node + 1]!]) }];
  });
}

function extent(line: FlatLine) {
  const [x, y] = [0, 1].map((offset) => line.filter((_, at) => at % 2 === offset));
  const left = least(x!);
  const right = -least(x!.map((value) => -value));
  const bottom = least(y!);
  const top = -least(y!.map((value) => -value));
  return { left, right, bottom, top, width: right - left, height: top - bottom };
}

function least(values: readonly number[]): number {
  return values.reduce((low, value) => Math.min(low, value), values[0] ?? 0);
}
