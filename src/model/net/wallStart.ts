import type { Layout } from './basketNet.ts';
import { sweep } from './startShape.ts';
import type { WallRows } from './wallRows.ts';

/** Start shape of the whole net: the base as laid out, the wall swept up from its outline. */
export function wallStart(layout: Layout, { rows, outline, rounding }: WallRows): Float64Array {
  const { base, ends, edge, wall } = layout;
  const start = new Float64Array(3 * wall(rows.length, 0));
  start.set(base.start);
  let height = 0;
  const steps = rows.slice(1).map((row, index) => {
    const step = (rows[index]!.pitch + row.pitch) / 2;
    height += step;
    return { step, length: row.girth - row.cornerLength, spacing: row.spacing, wall: height };
  });
  sweep({ outline, rows: steps, rounding }).forEach((loop, index) => {
    start.set(loop, 3 * wall(index + 1, 0));
  });
  // The foot of the wall follows the edge of a lifted base, and less so further up.
  ends.forEach(({ place }, e) => {
    const lift = base.start[3 * edge(place) + 2]!;
    for (let k = 1; k < rows.length; k++) {
      const z = 3 * wall(k, e) + 2;
      start[z] = start[z]! + lift * Math.exp(-k / 4);
    }
  });
  return start;
}
