/**
 * Triangles between the sections of a strand, and over its ends. A ring is a section's vertices in
 * turn, counter-clockwise seen against the direction of travel.
 * Hot loops over typed arrays: `!` says that an index is inside.
 */
import type { Section } from './section.ts';
import type { StrandMesh } from './strandMesh.ts';

/**
 * Joins each ring to the next, the last to the first where the strand is closed.
 *
 * @param at place in `mesh.indices` to write to
 * @param first vertex that the first of `rings` rings begins with
 * @returns the place after the last one written
 */
export function joinRings(
  { indices }: StrandMesh,
  at: number,
  first: number,
  sides: number,
  rings: number,
  closed: boolean,
): number {
  let index = at;
  for (let ring = 0; ring < (closed ? rings : rings - 1); ring += 1) {
    const here = first + ring * sides;
    const next = ring + 1 < rings ? here + sides : first;
    for (let side = 0; side < sides; side += 1) {
      const other = side + 1 < sides ? side + 1 : 0;
      indices[index] = here + side;
      indices[index + 1] = here + other;
      indices[index + 2] = next + side;
      indices[index + 3] = here + other;
      indices[index + 4] = next + other;
      indices[index + 5] = next + side;
      index += 6;
    }
  }
  return index;
}

/**
 * Closes a strand's end with a fan over a copy, from vertex `first`, of the ring from vertex `ring`.
 *
 * @param at place in `mesh.indices` to write to
 * @returns the place after the last one written
 */
export function capRing(
  { positions, normals, indices, strand, colour }: StrandMesh,
  at: number,
  first: number,
  ring: number,
  section: Section,
  isStart: boolean,
): number {
  const sides = section.shade.length;
  // two normals of the section that turn counter-clockwise span it: their cross product goes along
  const [p, q] = [3 * ring, 3 * (ring + 2)];
  let nx = normals[p + 1]! * normals[q + 2]! - normals[p + 2]! * normals[q + 1]!;
  let ny = normals[p + 2]! * normals[q]! - normals[p]! * normals[q + 2]!;
  let nz = normals[p]! * normals[q + 1]! - normals[p + 1]! * normals[q]!;
  const size = (isStart ? -1 : 1) * Math.sqrt(nx * nx + ny * ny + nz * nz);
  nx /= size;
  ny /= size;
  nz /= size;
  for (let side = 0; side < sides; side += 1) {
    const from = 3 * (ring + side);
    const to = 3 * (first + side);
    for (let axis = 0; axis < 3; axis += 1) {
      positions[to + axis] = positions[from + axis]!;
      colour[to + axis] = colour[from + axis]!;
    }
    normals[to] = nx;
    normals[to + 1] = ny;
    normals[to + 2] = nz;
    strand[first + side] = strand[ring + side]!;
  }
  let index = at;
  for (let side = 1; side + 1 < sides; side += 1) {
    indices[index] = first;
    indices[index + 1] = first + (isStart ? side + 1 : side);
    indices[index + 2] = first + (isStart ? side : side + 1);
    index += 3;
  }
  return index;
}
