/**
 * Curvature of the net as angles that are missing round its nodes. (`!`: typed arrays in a hot loop.)
 *
 * Gauss–Bonnet for a vessel, which is a disc: the deficits 2π − Σ angles of the nodes inside, and the
 * turning π − Σ angles of those on the rim, come to 2π together, whatever the shape.
 */
import type { Net } from '../net/net.ts';
import { surfaceTriangles } from './surface.ts';

/** Angle deficit of each node, radians; of a node on the rim, its turning. Cells as `surfaceTriangles`. */
export function angleDeficits(net: Net, positions: Float64Array): Float64Array {
  const deficits = new Float64Array(net.nodeCount).fill(2 * Math.PI);
  for (const node of net.rows.at(-1)!.nodes) deficits[node] = Math.PI;
  const triangles = surfaceTriangles(net);
  for (let i = 0; i < triangles.length; i += 3) {
    const [a, b, c] = [triangles[i]!, triangles[i + 1]!, triangles[i + 2]!];
    deficits[a] = deficits[a]! - angleAt(positions, a, b, c);
    deficits[b] = deficits[b]! - angleAt(positions, b, c, a);
    deficits[c] = deficits[c]! - angleAt(positions, c, a, b);
  }
  return deficits;
}

/** Angle at node a between the directions to b and to c. */
function angleAt(x: Float64Array, a: number, b: number, c: number): number {
  const [ax, ay, az] = [x[3 * a]!, x[3 * a + 1]!, x[3 * a + 2]!];
  const [ux, uy, uz] = [x[3 * b]! - ax, x[3 * b + 1]! - ay, x[3 * b + 2]! - az];
  const [vx, vy, vz] = [x[3 * c]! - ax, x[3 * c + 1]! - ay, x[3 * c + 2]! - az];
  const [wx, wy, wz] = [uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx];
  return Math.atan2(Math.hypot(wx, wy, wz), ux * vx + uy * vy + uz * vz);
}
