import { sectionCount } from './crossings.ts';
import type { Strand, StrandMesh } from './strandMesh.ts';
import { Sweep } from './sweep.ts';

/** All of `strands` as one mesh, with at most `most` sections in each gap where that is given. */
export function sweepStrands(
  strands: readonly Strand[],
  most = Number.POSITIVE_INFINITY,
): StrandMesh {
  let vertices = 0;
  let triangles = 0;
  const drawn = strands
    .filter(({ path }) => path.count >= 2)
    .map((strand) => ({ ...strand, between: Math.min(strand.between, most) }));
  for (const { path, section, between, closed, sparse = false } of drawn) {
    const sides = section.shade.length;
    const rings = sectionCount(path, between, closed, sparse);
    vertices += sides * (rings + (closed ? 0 : 2));
    triangles += 2 * sides * (closed ? rings : rings - 1) + (closed ? 0 : 2 * (sides - 2));
  }
  const sweep = new Sweep(vertices, 3 * triangles);
  for (const strand of drawn) sweep.add(strand);
  return sweep.mesh;
}
