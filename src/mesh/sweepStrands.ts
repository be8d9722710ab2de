import { sectionCount } from './crossings.ts';
import type { Strand, StrandMesh } from './strandMesh.ts';
import { Sweep } from './sweep.ts';

/** All of `strands` as one mesh. */
export function sweepStrands(strands: readonly Strand[]): StrandMesh {
  let vertices = 0;
  let triangles = 0;
  for (const { path, section, between, closed } of strands) {
    if (path.count < 2) continue;
    const sides = section.shade.length;
    const rings = sectionCount(path, between, closed);
    vertices += sides * (rings + (closed ? 0 : 2));
    triangles += 2 * sides * (closed ? rings : rings - 1) + (closed ? 0 : 2 * (sides - 2));
  }
  const sweep = new Sweep(vertices, 3 * triangles);
  for (const strand of strands) {
    if (strand.path.count >= 2) sweep.add(strand);
  }
  return sweep.mesh;
}
