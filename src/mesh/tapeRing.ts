/**
 * The tape as it lies round a row, and how far the basket reaches: what is drawn on the stage beside it.
 * Hot loops over typed arrays: `!` says that an index is inside.
 */
import type { Basket } from '../model/basket.ts';
import { halfWall } from '../model/read/wallThickness.ts';
import { nodeNormals } from './surface.ts';

/**
 * Points of a tape pulled round row `row`, x, y, z, …, mm: the outer face where it bulges, straight
 * across what is hollow.
 */
export function tapeRing({ net, plan, positions }: Basket, row: number): Float64Array {
  const { nodes } = net.rows[row]!;
  const normals = nodeNormals(net, positions);
  const off = halfWall(plan, row) + 0.4;
  const points = Array.from(nodes, (node) =>
    [0, 1, 2].map((d) => positions[3 * node + d]! + off * normals[3 * node + d]!),
  ) as [number, number, number][];
  return Float64Array.from(hullSeenFromAbove(points).flat());
}

type Point = readonly [number, number, number];

/** The points that a thread pulled round them would touch, counter-clockwise (Andrew's monotone chain). */
function hullSeenFromAbove(points: readonly Point[]): Point[] {
  const sorted = points.toSorted((a, b) => a[0] - b[0] || a[1] - b[1]);
  const chain = (from: readonly Point[]) => {
    const kept: Point[] = [];
    for (const point of from) {
      while (kept.length > 1 && turn(kept.at(-2)!, kept.at(-1)!, point) <= 0) kept.pop();
      kept.push(point);
    }
    return kept.slice(0, -1);
  };
  return [...chain(sorted), ...chain(sorted.toReversed())];
}

/** Positive where the way from a over b to c turns left. */
function turn(a: Point, b: Point, c: Point): number {
  return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
}
