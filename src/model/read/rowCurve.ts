/**
 * The weaver's path in the middle of the wall as a fine polyline: smooth through the nodes, and round
 * a corner that is still sharp further out, by the corner's part of the row's `cornerLength`.
 * (`!`: typed arrays in a hot loop.)
 */
import type { End, Net } from '../net/net.ts';
import { reachOut } from './cornerReach.ts';
import type { RowCurve } from './smoothRow.ts';
import { drawSmooth, measureChords, pieces } from './smoothRow.ts';

/** The curves of rows 1 … R; `positions` holds x, y, z of each node. */
export function rowCurves(net: Net, positions: Float64Array): RowCurve[] {
  const corner = cornerSegments(net.ends);
  const n = corner.length;
  const chords = { unit: new Float64Array(3 * n), length: new Float64Array(n) };
  return net.rows.slice(1).map((row) => {
    const curve = { points: new Float64Array(3 * pieces * n), segment: new Float64Array(n) };
    measureChords(row.nodes, positions, chords);
    drawSmooth(row, positions, chords, curve);
    const corners = corner.reduce((sum, is) => sum + (is ? 1 : 0), 0);
    const extra = corners > 0 ? row.cornerLength / corners : 0;
    corner.forEach((is, j) => {
      if (!is) return;
      // What is left of a corner that has all but gone is a length and no longer a shape.
      if (extra < 1e-3 * chords.length[j]!) curve.segment[j] = curve.segment[j]! + extra;
      else reachOut(row, j, extra, positions, chords, curve);
    });
    return curve;
  });
}

/** True for each end that is the last before a corner: the weaver's next segment goes round it. */
function cornerSegments(ends: readonly End[]): boolean[] {
  return ends.map(({ side }, j) => side !== ends[(j + 1) % ends.length]!.side);
}
