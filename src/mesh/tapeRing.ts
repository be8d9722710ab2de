/**
 * The tape as it lies round a row, and how far the basket reaches: what is drawn on the stage beside it.
 * Hot loops over typed arrays: `!` says that an index is inside.
 */
import type { Basket } from '../model/basket.ts';
import { rowCurves } from '../model/read/rowCurve.ts';
import { halfWall } from '../model/read/wallThickness.ts';

/** How far over the weavers the tape is drawn, so that it can be seen, mm. */
const over = 0.3;

/**
 * Points of a tape pulled round row `row`, x, y, z, …, mm: the outer face where it bulges, straight
 * across what is hollow.
 */
export function tapeRing({ net, plan, positions }: Basket, row: number): Float64Array {
  const { points } = rowCurves(net, positions)[row - 1]!;
  const off = halfWall(plan, row) + over;
  const count = points.length / 3;
  const outer = Array.from({ length: count }, (_, at): Point => {
    const before = 3 * ((at + count - 1) % count);
    const after = 3 * ((at + 1) % count);
    const x = points[after]! - points[before]!;
    const y = points[after + 1]! - points[before + 1]!;
    const size = Math.hypot(x, y) || 1;
    // rows run counter-clockwise: outward is to the right
    return [
      points[3 * at]! + (off * y) / size,
      points[3 * at + 1]! - (off * x) / size,
      points[3 * at + 2]!,
    ];
  });
  return Float64Array.from(hullSeenFromAbove(outer).flat());
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
