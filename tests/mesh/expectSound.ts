import { expect } from 'vitest';
import type { StrandMesh } from '../../src/mesh/strandMesh.ts';

export type Point = readonly [number, number, number];

/**
 * Holds a mesh to what every mesh must be: numbers, indices inside, unit normals, a strand and a
 * colour for each vertex, no vertex unused, and triangles that face the way their normals do.
 *
 * @param folded share of triangles that may face the other way (sharp bends fold a strand's inside)
 */
export function expectSound(mesh: StrandMesh, folded = 0): void {
  const { positions, normals, indices, strand, colour } = mesh;
  const vertices = positions.length / 3;
  expect(vertices).toBeGreaterThan(0);
  expect(normals.length).toBe(positions.length);
  expect(colour.length).toBe(positions.length);
  expect(strand.length).toBe(vertices);
  expect(indices.length % 3).toBe(0);
  expect(positions.every(Number.isFinite)).toBe(true);
  expect(normals.every(Number.isFinite)).toBe(true);
  expect(indices.every((vertex) => vertex < vertices)).toBe(true);
  expect(new Set(indices).size).toBe(vertices);

  let longest = 0;
  for (let vertex = 0; vertex < vertices; vertex += 1) {
    longest = Math.max(longest, Math.abs(1 - size(pointOf(normals, vertex))));
  }
  expect(longest).toBeLessThan(1e-5);

  let [wrong, all] = [0, 0];
  for (let at = 0; at < indices.length; at += 3) {
    const corners = [0, 1, 2].map((corner) => indices[at + corner] ?? 0);
    const [a, b, c] = corners.map((vertex) => pointOf(positions, vertex)) as [Point, Point, Point];
    const facing = cross(minus(b, a), minus(c, a));
    if (size(facing) < 1e-6) continue;
    const meant = corners.map((vertex) => pointOf(normals, vertex)).reduce(plus, [0, 0, 0]);
    all += 1;
    if (dot(facing, meant) < 0) wrong += 1;
  }
  expect(wrong / all).toBeLessThanOrEqual(folded);
}

/** x, y, z of vertex or node `at`. */
export function pointOf(values: Float32Array | Float64Array, at: number): Point {
  return [
    values[3 * at] ?? Number.NaN,
    values[3 * at + 1] ?? Number.NaN,
    values[3 * at + 2] ?? Number.NaN,
  ];
}

export function minus(one: Point, other: Point): Point {
  return [one[0] - other[0], one[1] - other[1], one[2] - other[2]];
}

export function dot(one: Point, other: Point): number {
  return one[0] * other[0] + one[1] * other[1] + one[2] * other[2];
}

export function size(one: Point): number {
  return Math.hypot(...one);
}

function plus(one: Point, other: Point): Point {
  return [one[0] + other[0], one[1] + other[1], one[2] + other[2]];
}

export function cross(one: Point, other: Point): Point {
  return [
    one[1] * other[2] - one[2] * other[1],
    one[2] * other[0] - one[0] * other[2],
    one[0] * other[1] - one[1] * other[0],
  ];
}
