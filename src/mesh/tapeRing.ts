/**
 * The tape as it lies round a row, and how far the basket reaches: what is drawn on the stage beside it.
 * Hot loops over typed arrays: `!` says that an index is inside.
 */
import type { Basket } from '../model/basket.ts';
import { hullFromAbove } from '../model/read/hullFromAbove.ts';
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
  const outer = new Float64Array(points.length);
  for (let at = 0; at < count; at++) {
    const before = 3 * ((at + count - 1) % count);
    const after = 3 * ((at + 1) % count);
    const x = points[after]! - points[before]!;
    const y = points[after + 1]! - points[before + 1]!;
    const size = Math.hypot(x, y) || 1;
    // rows run counter-clockwise: outward is to the right
    outer[3 * at] = points[3 * at]! + (off * y) / size;
    outer[3 * at + 1] = points[3 * at + 1]! - (off * x) / size;
    outer[3 * at + 2] = points[3 * at + 2]!;
  }
  const hull = hullFromAbove(outer, [...Array(count).keys()]);
  return Float64Array.from(hull.flatMap((at) => [...outer.subarray(3 * at, 3 * at + 3)]));
}
