/** Volume a surface holds. (`!`: typed arrays in a hot loop.) */

/**
 * Volume below the level z = `level` inside a surface that is open above it, by the divergence
 * theorem: every triangle, cut off at the level, spans a cone with a point of the level plane, in
 * which the missing lid has no height. Triangles are counter-clockwise seen from outside.
 *
 * @param points x, y, z of each point
 * @param triangles three point numbers each
 */
export function volumeBelow(points: Float64Array, triangles: Int32Array, level: number): number {
  let volume = 0;
  const under: number[] = [];
  for (let t = 0; t < triangles.length; t += 3) {
    under.length = 0;
    for (let side = 0; side < 3; side++) {
      const p = 3 * triangles[t + side]!;
      const q = 3 * triangles[t + ((side + 1) % 3)]!;
      const zp = points[p + 2]! - level;
      const zq = points[q + 2]! - level;
      if (zp <= 0) under.push(points[p]!, points[p + 1]!, zp);
      if (zp * zq < 0) {
        const share = zp / (zp - zq);
        const x = points[p]! + share * (points[q]! - points[p]!);
        const y = points[p + 1]! + share * (points[q + 1]! - points[p + 1]!);
        under.push(x, y, 0);
      }
    }
    for (let i = 6; i < under.length; i += 3) volume += spanned(under, 0, i - 3, i);
  }
  return volume / 6;
}

/** Six times the volume between the origin and three points of a list of x, y, z. */
function spanned(list: readonly number[], a: number, b: number, c: number): number {
  const [ax, ay, az] = [list[a]!, list[a + 1]!, list[a + 2]!];
  const [bx, by, bz] = [list[b]!, list[b + 1]!, list[b + 2]!];
  const [cx, cy, cz] = [list[c]!, list[c + 1]!, list[c + 2]!];
  return ax * (by * cz - bz * cy) + ay * (bz * cx - bx * cz) + az * (bx * cy - by * cx);
}
