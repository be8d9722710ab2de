/**
 * Binary STL: an 80-byte heading, the number of triangles, then for each of them its normal, its three
 * corners (32-bit floats) and two bytes of nothing, all little-endian.
 *
 * Written here, not by a library: the one well-kept serializer of the registry first snaps corners to
 * a grid of its own and mends what it thinks are gaps, so the solid that leaves is not the one that
 * was checked; and three, which has one, is the stage's alone. The format is these fifty bytes.
 */
import { shapeFileWords } from '#words/shapeFiles.ts';
import type { Solid } from '../mesh/solid/wallSolid.ts';

const headingBytes = 80;
const triangleBytes = 50;

/** The solid as a binary STL file, in millimetres. */
export function stl({ points, triangles }: Solid): Uint8Array<ArrayBuffer> {
  const count = triangles.length / 3;
  const bytes = new Uint8Array(headingBytes + 4 + triangleBytes * count);
  new TextEncoder().encodeInto(shapeFileWords.stlHeading, bytes.subarray(0, headingBytes));
  const view = new DataView(bytes.buffer);
  view.setUint32(headingBytes, count, true);
  for (let triangle = 0; triangle < count; triangle += 1) {
    const corners = [0, 1, 2].map((corner) => {
      const at = 3 * (triangles[3 * triangle + corner] ?? 0);
      return [points[at] ?? 0, points[at + 1] ?? 0, points[at + 2] ?? 0] as const;
    }) as [Point, Point, Point];
    const numbers = [...facing(...corners), ...corners.flat()];
    const from = headingBytes + 4 + triangleBytes * triangle;
    numbers.forEach((value, at) => {
      view.setFloat32(from + 4 * at, value, true);
    });
  }
  return bytes;
}

type Point = readonly [number, number, number];

/** Unit normal of a triangle; zero where it has no area. */
function facing(a: Point, b: Point, c: Point): Point {
  const [ux, uy, uz] = [b[0] - a[0], b[1] - a[1], b[2] - a[2]];
  const [vx, vy, vz] = [c[0] - a[0], c[1] - a[1], c[2] - a[2]];
  const [x, y, z] = [uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx];
  const size = Math.hypot(x, y, z);
  return size > 0 ? [x / size, y / size, z / size] : [0, 0, 0];
}
