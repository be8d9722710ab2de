/**
 * The middle surface of base and wall by the chords between its nodes, up to the cut edge half a row
 * over the last: what the smooth skin is drawn over.
 * Hot loops over typed arrays: `!` says that an index is inside.
 */
import type { Basket } from '../../model/basket.ts';
import type { Net } from '../../model/net/net.ts';
import { halfBase, halfWall } from '../../model/read/wallThickness.ts';
import { nodeNormals } from '../surface.ts';

/** A surface of triangles with a border. */
export interface Skin {
  /** x, y, z of each point, mm, z up. */
  readonly points: Float64Array;
  /** From the middle of base or wall to either face at each point, mm. */
  readonly half: Float64Array;
  /** Three points a triangle, counter-clockwise seen from outside (below the base). */
  readonly triangles: Int32Array;
  /** Points of the border in turn, counter-clockwise seen from above: the rim. */
  readonly rim: Int32Array;
}

/** A skin with the unit normal, outward, that it is to have at each point. */
export interface NormalSkin extends Skin {
  readonly normals: Float64Array;
  /** Where base and wall meet in a sharp fold, each has a normal of its own; null where they do not. */
  readonly fold: Fold | null;
}

/** A sharp fold along the base's edge. */
export interface Fold {
  /** Points below `first` are of the base, those from `last` on of the wall; the fold is between. */
  readonly first: number;
  readonly last: number;
  /** Unit normals of the base alone and of the wall alone; good at the fold's points. */
  readonly base: Float64Array;
  readonly wall: Float64Array;
}

/** The net's nodes, and after them the top of each end. */
export function netSkin({ plan, net, positions }: Basket): NormalSkin {
  const { nodeCount } = net;
  const ends = net.ends.length;
  const points = new Float64Array(3 * (nodeCount + ends));
  const normals = new Float64Array(points.length);
  const half = new Float64Array(nodeCount + ends).fill(halfBase(plan));
  points.set(positions);
  normals.set(nodeNormals(net, positions));
  net.rows.forEach(({ nodes }, row) => {
    if (row > 0) for (const node of nodes) half[node] = halfWall(plan, row);
  });
  const pitch = net.rows.at(-1)!.pitch;
  net.ends.forEach(({ nodes }, end) => {
    const last = 3 * nodes.at(-1)!;
    const before = 3 * nodes.at(-2)!;
    const top = 3 * (nodeCount + end);
    const [x, y, z] = [0, 1, 2].map((d) => positions[last + d]! - positions[before + d]!);
    const size = Math.hypot(x!, y!, z!);
    const on = size > 1e-9 ? pitch / 2 / size : 0;
    points[top] = positions[last]! + on * x!;
    points[top + 1] = positions[last + 1]! + on * y!;
    points[top + 2] = positions[last + 2]! + on * z!;
    for (let d = 0; d < 3; d += 1) normals[top + d] = normals[last + d]!;
    half[nodeCount + end] = half[last / 3]!;
  });
  return {
    points,
    normals,
    half,
    fold:
      plan.base.kind === 'board' || plan.base.upsett === 'creased' ? foldOf(net, positions) : null,
    triangles: cut(points, net.quads, net.triangles, topCells(net.rows.at(-1)!.nodes, nodeCount)),
    rim: Int32Array.from({ length: ends }, (_, end) => nodeCount + end),
  };
}

/** The base's edge as a fold: normals by the cells on either side of it. */
function foldOf(net: Net, positions: Float64Array): Fold {
  const first = net.baseNodeCount;
  const last = first + new Set(net.rows[0]!.nodes).size;
  const side = (isWall: boolean) => {
    const chosen = (cells: Int32Array, corners: 3 | 4) =>
      Int32Array.from(
        Array.from({ length: cells.length / corners }, (_, cell) =>
          cells.subarray(corners * cell, corners * (cell + 1)),
        )
          .filter((cell) => cell.some((node) => node >= last) === isWall)
          .flatMap((cell) => [...cell]),
      );
    const cells = { quads: chosen(net.quads, 4), triangles: chosen(net.triangles, 3) };
    return nodeNormals({ ...net, ...cells }, positions);
  };
  return { first, last, base: side(false), wall: side(true) };
}

/** Four-sided cells from the last row to the tops. */
function topCells(last: Int32Array, nodeCount: number): number[] {
  return Array.from(last).flatMap((node, end) => {
    const next = (end + 1) % last.length;
    return [node, last[next]!, nodeCount + next, nodeCount + end];
  });
}

/** All cells as triangles: four-sided ones are cut along the shorter diagonal. */
function cut(
  points: Float64Array,
  quads: Int32Array,
  triangles: Int32Array,
  more: readonly number[],
): Int32Array {
  const cells = Int32Array.from([...quads, ...more]);
  const all = new Int32Array(1.5 * cells.length + triangles.length);
  let at = 0;
  for (let i = 0; i < cells.length; i += 4) {
    const [a, b, c, d] = [cells[i]!, cells[i + 1]!, cells[i + 2]!, cells[i + 3]!];
    const along = span(points, a, c) <= span(points, b, d) * (1 + 1e-9);
    all.set(along ? [a, b, c, a, c, d] : [a, b, d, b, c, d], at);
    at += 6;
  }
  all.set(triangles, at);
  return all;
}

function span(points: Float64Array, a: number, b: number): number {
  return Math.hypot(
    points[3 * b]! - points[3 * a]!,
    points[3 * b + 1]! - points[3 * a + 1]!,
    points[3 * b + 2]! - points[3 * a + 2]!,
  );
}
