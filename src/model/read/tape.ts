/** What a tape pulled round the outside reads. (`!`: typed arrays in a hot loop.) */
import { hullShare } from './loopHull.ts';

/**
 * Tape girth of a loop, mm: the hull of the outer face, T = hull + 2π·t (Steiner 1840, for any convex
 * loop; t is the distance from the middle of the wall to its outer face).
 *
 * A tape follows a row that rises and falls, so hollows are bridged as they look from straight above
 * the loop's own plane: the loop's length in space times hull ÷ loop in that plane.
 *
 * @param points x, y, z of the points round the loop
 * @param length the loop's own length, mm
 */
export function tapeGirth(points: Float64Array, length: number, thickness: number): number {
  return length * hullShare(inPlane(points)) + 2 * Math.PI * thickness;
}

/** The loop seen along the normal of its plane (that of its vector area), x, y of each point. */
function inPlane(points: Float64Array): Float64Array {
  const count = points.length / 3;
  let [nx, ny, nz] = [0, 0, 0];
  for (let i = 0; i < count; i++) {
    const a = 3 * i;
    const b = 3 * ((i + 1) % count);
    nx += points[a + 1]! * points[b + 2]! - points[a + 2]! * points[b + 1]!;
    ny += points[a + 2]! * points[b]! - points[a]! * points[b + 2]!;
    nz += points[a]! * points[b + 1]! - points[a + 1]! * points[b]!;
  }
  const size = Math.sqrt(nx * nx + ny * ny + nz * nz) + 1e-300;
  nx /= size;
  ny /= size;
  nz /= size;
  // The least turn that brings the normal upright (rows lie nearly level, never on edge).
  const flat = new Float64Array(2 * count);
  for (let i = 0; i < count; i++) {
    const [x, y, z] = [points[3 * i]!, points[3 * i + 1]!, points[3 * i + 2]!];
    const rise = (nx * x + ny * y) / (1 + Math.abs(nz)) + (nz < 0 ? -z : z);
    flat[2 * i] = x - nx * rise;
    flat[2 * i + 1] = y - ny * rise;
  }
  return flat;
}
