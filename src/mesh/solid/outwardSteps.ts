import type { Skin } from './netSkin.ts';

/** No point moves farther than this many thicknesses, however sharp the fold. */
const farthest = 1.8;

/**
 * For each point of a skin the step, x, y, z, that moves the faces round it outward by 1: along their
 * mean normal (each counted by its angle at the point), and farther at a fold, as a mitre is.
 * Hot loops over typed arrays: `!` says that an index is inside.
 */
export function outwardSteps({ points, triangles }: Skin): Float64Array {
  const step = new Float64Array(points.length);
  const angle = new Float64Array(triangles.length);
  const normal = new Float64Array(triangles.length);
  for (let at = 0; at < triangles.length; at += 3) {
    readTriangle(points, triangles, at, normal, angle);
    for (let corner = at; corner < at + 3; corner += 1) {
      const to = 3 * triangles[corner]!;
      for (let d = 0; d < 3; d += 1) step[to + d]! += angle[corner]! * normal[at + d]!;
    }
  }
  for (let at = 0; at < step.length; at += 3) {
    const size = Math.hypot(step[at]!, step[at + 1]!, step[at + 2]!) || 1;
    for (let d = at; d < at + 3; d += 1) step[d]! /= size;
  }
  // least squares over the faces: Σ w·cos ÷ Σ w·cos²
  const first = new Float64Array(points.length / 3);
  const second = new Float64Array(points.length / 3);
  for (let at = 0; at < triangles.length; at += 3) {
    for (let corner = at; corner < at + 3; corner += 1) {
      const point = triangles[corner]!;
      let cosine = 0;
      for (let d = 0; d < 3; d += 1) cosine += step[3 * point + d]! * normal[at + d]!;
      first[point]! += angle[corner]! * cosine;
      second[point]! += angle[corner]! * cosine * cosine;
    }
  }
  for (let at = 0; at < step.length; at += 1) {
    const point = Math.floor(at / 3);
    const share = second[point]! > 1e-12 ? first[point]! / second[point]! : 1;
    step[at]! *= Math.min(farthest, Math.max(0, share));
  }
  return step;
}

/** Writes a triangle's unit normal and its three angles to place `at`. */
function readTriangle(
  points: Float64Array,
  triangles: Int32Array,
  at: number,
  normal: Float64Array,
  angle: Float64Array,
): void {
  const corners = [3 * triangles[at]!, 3 * triangles[at + 1]!, 3 * triangles[at + 2]!] as const;
  const side = (from: number, to: number) =>
    [0, 1, 2].map((d) => points[to + d]! - points[from + d]!) as [number, number, number];
  const [u, v] = [side(corners[0], corners[1]), side(corners[0], corners[2])];
  const across = [
    u[1] * v[2] - u[2] * v[1],
    u[2] * v[0] - u[0] * v[2],
    u[0] * v[1] - u[1] * v[0],
  ] as const;
  const area = Math.hypot(...across);
  for (let d = 0; d < 3; d += 1) normal[at + d] = area > 1e-12 ? across[d]! / area : 0;
  for (let corner = 0; corner < 3; corner += 1) {
    const here = corners[corner]!;
    const one = side(here, corners[(corner + 1) % 3]!);
    const other = side(here, corners[(corner + 2) % 3]!);
    const along = one[0] * other[0] + one[1] * other[1] + one[2] * other[2];
    angle[at + corner] = area > 1e-12 ? Math.atan2(area, along) : 0;
  }
}
