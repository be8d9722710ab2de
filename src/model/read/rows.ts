/** Every row as a maker would measure it. (`!`: typed arrays in a hot loop.) */
import { bandOfRow } from '../../plan/counts.ts';
import type { Plan } from '../../plan/schema.ts';
import type { RowReading } from '../basket.ts';
import type { Net } from '../net/net.ts';
import { edgeStrain } from './edgeStrain.ts';
import { leans } from './lean.ts';
import { midSideEnds } from './midSides.ts';
import type { RowCurve } from './smoothRow.ts';
import { tapeGirth } from './tape.ts';
import { halfWall } from './wallThickness.ts';

/**
 * Rows 1 … R read off a standing basket. Row 1's change is from the base's outline carried out to the
 * same face. Gaps run along the weaver, from the edge of one stake to the edge of the next, so that
 * two stakes meeting at a sharp corner have a gap of 0. Two ends that start from one place of the base
 * (a split stake, an added one) touch there and part as they rise: between them no gap is under 0.
 */
export function rowReadings(
  plan: Plan,
  net: Net,
  positions: Float64Array,
  curves: readonly RowCurve[],
): RowReading[] {
  const { ends, rows } = net;
  const n = ends.length;
  const middles = midSideEnds(ends).flat();
  const corners = ends.flatMap((end, e) => (end.corner ? [e] : []));
  const covered = ends.map((end, j) => (end.width + ends[(j + 1) % n]!.width) / 2);
  const oneFoot = ends.map((end, j) => end.nodes[0] === ends[(j + 1) % n]!.nodes[0]);
  let before = rows[0]!.girth + 2 * Math.PI * halfWall(plan, 1);
  let wall = 0;
  return rows.slice(1).map((row, index): RowReading => {
    const { points, segment } = curves[index]!;
    let girthReached = 0;
    let gapLeast = Number.POSITIVE_INFINITY;
    let gapMost = Number.NEGATIVE_INFINITY;
    for (let j = 0; j < n; j++) {
      const length = segment[j]!;
      girthReached += length;
      const apart = length - covered[j]!;
      const gap = oneFoot[j] ? Math.max(0, apart) : apart;
      if (gap < gapLeast) gapLeast = gap;
      if (gap > gapMost) gapMost = gap;
    }
    const thickness = halfWall(plan, index + 1);
    const tape = tapeGirth(points, girthReached, thickness);
    const change = tape - before;
    before = tape;
    wall += row.pitch;
    const lean = leans(net, index + 1, positions);
    return {
      row: index + 1,
      girth: row.girth,
      girthReached,
      tapeGirth: tape,
      change,
      changePerGap: change / n,
      length: across(points, 0) + 2 * thickness,
      width: across(points, 1) + 2 * thickness,
      heightSide: meanHeight(row.nodes, middles, positions),
      heightCorner: meanHeight(row.nodes, corners, positions),
      lean: lean.mean,
      leanMost: lean.most,
      gapLeast,
      gapMost,
      edgeStrain: edgeStrain(net, index + 1, bandOfRow(plan, index + 1).weaver.width, positions),
      wall,
    };
  });
}

/** Extent of the points along axis `axis`. */
function across(points: Float64Array, axis: 0 | 1): number {
  let least = Number.POSITIVE_INFINITY;
  let most = Number.NEGATIVE_INFINITY;
  for (let i = axis; i < points.length; i += 3) {
    const value = points[i]!;
    if (value < least) least = value;
    if (value > most) most = value;
  }
  return most - least;
}

function meanHeight(nodes: Int32Array, ends: readonly number[], positions: Float64Array): number {
  let sum = 0;
  for (const end of ends) sum += positions[3 * nodes[end]! + 2]!;
  return sum / ends.length;
}
