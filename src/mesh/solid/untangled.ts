import type { Skin } from './netSkin.ts';

/** Turns of easing at the most; after the first few the neighbours of turned triangles ease too. */
const turns = 30;
const few = 6;

/**
 * A face of a skin, eased where it turns over itself: inside a bend tighter than the wall is thick the
 * points of a moved face pass each other. Those of turned triangles go to the middle of their
 * neighbours until none is turned.
 * Hot loops over typed arrays: `!` says that an index is inside.
 *
 * @param face x, y, z of the skin's points as moved
 */
export function untangled(face: Float64Array, { points, triangles }: Skin): Float64Array {
  let moved = face;
  for (let turn = 0; turn < turns; turn += 1) {
    const tangled = tangledPoints(moved, points, triangles);
    if (tangled.size === 0) break;
    moved = eased(moved, triangles, turn < few ? tangled : withNeighbours(tangled, triangles));
  }
  return moved;
}

/** Points of triangles that face away from what they face in the skin. */
function tangledPoints(
  face: Float64Array,
  skin: Float64Array,
  triangles: Int32Array,
): ReadonlySet<number> {
  const found = new Set<number>();
  for (let at = 0; at < triangles.length; at += 3) {
    const [a, b, c] = [triangles[at]!, triangles[at + 1]!, triangles[at + 2]!];
    const [p, q] = [facing(face, a, b, c), facing(skin, a, b, c)];
    if (p[0] * q[0] + p[1] * q[1] + p[2] * q[2] > 0) continue;
    found.add(a);
    found.add(b);
    found.add(c);
  }
  return found;
}

function withNeighbours(some: ReadonlySet<number>, triangles: Int32Array): ReadonlySet<number> {
  const found = new Set(some);
  for (let at = 0; at < triangles.length; at += 3) {
    const corners = triangles.subarray(at, at + 3);
    if (corners.some((point) => some.has(point))) for (const point of corners) found.add(point);
  }
  return found;
}

/** The face with each of `some` points in the middle between itself and its neighbours. */
function eased(face: Float64Array, triangles: Int32Array, some: ReadonlySet<number>): Float64Array {
  const sum = new Map<number, [number, number, number, number]>();
  for (let at = 0; at < triangles.length; at += 1) {
    const point = triangles[at]!;
    if (!some.has(point)) continue;
    const total = sum.get(point) ?? [0, 0, 0, 0];
    const first = at - (at % 3);
    for (let corner = first; corner < first + 3; corner += 1) {
      const other = 3 * triangles[corner]!;
      if (other === 3 * point) continue;
      total[0] += face[other]!;
      total[1] += face[other + 1]!;
      total[2] += face[other + 2]!;
      total[3] += 1;
    }
    sum.set(point, total);
  }
  const next = Float64Array.from(face);
  for (const [point, [x, y, z, count]] of sum) {
    next[3 * point] = (face[3 * point]! + x / count) / 2;
    next[3 * point + 1] = (face[3 * point + 1]! + y / count) / 2;
    next[3 * point + 2] = (face[3 * point + 2]! + z / count) / 2;
  }
  return next;
}

function facing(
  points: Float64Array,
  a: number,
  b: number,
  c: number,
): readonly [number, number, number] {
  const side = (d: number, from: number, to: number) => points[3 * to + d]! - points[3 * from + d]!;
  const [ux, uy, uz] = [side(0, a, b), side(1, a, b), side(2, a, b)];
  const [vx, vy, vz] = [side(0, a, c), side(1, a, c), side(2, a, c)];
  return [uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx];
}
