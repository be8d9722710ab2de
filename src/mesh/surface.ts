/**
 * The wall and the base as a surface: which way is out at a node, and which way a row runs there.
 * Hot loops over typed arrays: `!` says that an index is inside.
 */
import type { Net } from '../model/net/net.ts';

/**
 * Unit normal at each node, x, y, z: out of the wall, down in the base. The mean of the cells round
 * the node, each counted once whatever its size; straight down where no cell says otherwise.
 */
export function nodeNormals(net: Net, positions: Float64Array): Float64Array {
  const normals = new Float64Array(3 * net.nodeCount);
  const { quads, triangles } = net;
  for (let at = 0; at + 3 < quads.length; at += 4) {
    addCell(normals, positions, quads, at, 4);
  }
  for (let at = 0; at + 2 < triangles.length; at += 3) {
    addCell(normals, positions, triangles, at, 3);
  }
  for (let at = 0; at < normals.length; at += 3) {
    const size = Math.hypot(normals[at]!, normals[at + 1]!, normals[at + 2]!);
    if (size > 1e-9) {
      normals[at]! /= size;
      normals[at + 1]! /= size;
      normals[at + 2]! /= size;
    } else {
      normals[at] = 0;
      normals[at + 1] = 0;
      normals[at + 2] = -1;
    }
  }
  return normals;
}

/** Adds a cell's unit normal to each of its `count` corners; cells without area add nothing. */
function addCell(
  normals: Float64Array,
  positions: Float64Array,
  cells: Int32Array,
  at: number,
  count: 3 | 4,
): void {
  // across both diagonals; a triangle is a quad whose last corner is its first again
  const a = 3 * cells[at]!;
  const b = 3 * cells[at + 1]!;
  const c = 3 * cells[at + 2]!;
  const d = count === 4 ? 3 * cells[at + 3]! : a;
  const ux = positions[c]! - positions[a]!;
  const uy = positions[c + 1]! - positions[a + 1]!;
  const uz = positions[c + 2]! - positions[a + 2]!;
  const vx = positions[d]! - positions[b]!;
  const vy = positions[d + 1]! - positions[b + 1]!;
  const vz = positions[d + 2]! - positions[b + 2]!;
  const x = uy * vz - uz * vy;
  const y = uz * vx - ux * vz;
  const z = ux * vy - uy * vx;
  const size = Math.sqrt(x * x + y * y + z * z);
  if (!(size > 0)) return;
  for (let corner = 0; corner < count; corner += 1) {
    const node = 3 * cells[at + corner]!;
    normals[node]! += x / size;
    normals[node + 1]! += y / size;
    normals[node + 2]! += z / size;
  }
}

/**
 * Writes into `out` (x, y, z, from place `at`) the unit tangent at `here` of the circle through
 * three points given by their places in `points`, made square to the unit normal at `normal` in
 * `normals`. Coinciding points give some direction in the surface, never NaN.
 */
export function tangentAt(
  out: Float64Array,
  at: number,
  points: Float64Array,
  before: number,
  here: number,
  after: number,
  normals: Float64Array,
  normal: number,
): void {
  const ax = points[here]! - points[before]!;
  const ay = points[here + 1]! - points[before + 1]!;
  const az = points[here + 2]! - points[before + 2]!;
  const bx = points[after]! - points[here]!;
  const by = points[after + 1]! - points[here + 1]!;
  const bz = points[after + 2]! - points[here + 2]!;
  // each chord weighs by the inverse square of its length: exact on a circle, to second order
  const a = weight(ax * ax + ay * ay + az * az);
  const b = weight(bx * bx + by * by + bz * bz);
  let x = a * ax + b * bx;
  let y = a * ay + b * by;
  let z = a * az + b * bz;
  const nx = normals[normal]!;
  const ny = normals[normal + 1]!;
  const nz = normals[normal + 2]!;
  const out1 = x * nx + y * ny + z * nz;
  x -= out1 * nx;
  y -= out1 * ny;
  z -= out1 * nz;
  let size = Math.sqrt(x * x + y * y + z * z);
  if (!(size > 1e-12)) {
    // any direction square to the normal
    x = Math.abs(nx) < 0.8 ? 1 - nx * nx : -nx * ny;
    y = Math.abs(nx) < 0.8 ? -nx * ny : 1 - ny * ny;
    z = Math.abs(nx) < 0.8 ? -nx * nz : -ny * nz;
    size = Math.sqrt(x * x + y * y + z * z);
  }
  out[at] = x / size;
  out[at + 1] = y / size;
  out[at + 2] = z / size;
}

function weight(squared: number): number {
  return squared > 1e-18 ? 1 / squared : 0;
}
