/** Height of the lower face at every node. (`!`: typed arrays in a hot loop.) */
import type { Plan } from '../../plan/schema.ts';
import type { Net } from '../net/net.ts';
import { halfBase, halfEdge, halfWall } from './wallThickness.ts';

/**
 * z of the outer face under each node, mm: the node's middle less half of what lies there. Crossings
 * of the base have two stakes, its edge one, a board its thickness; a wall that leans counts by how flat it lies.
 * `positions` holds x, y, z of each node with the basket upright.
 */
export function underside(plan: Plan, net: Net, positions: Float64Array): Float64Array {
  const under = new Float64Array(net.nodeCount);
  const crossing = halfBase(plan);
  const edge = halfEdge(plan);
  for (let node = 0; node < net.baseNodeCount; node++) {
    under[node] = positions[3 * node + 2]! - crossing;
  }
  for (const node of net.rows[0]!.nodes) {
    under[node] = positions[3 * node + 2]! - edge;
  }
  const half = net.rows.map((_, row) => (row === 0 ? 0 : halfWall(plan, row)));
  for (const { nodes } of net.ends) {
    for (let row = 1; row < nodes.length; row++) {
      const a = 3 * nodes[row - 1]!;
      const b = 3 * nodes[row]!;
      const x = positions[b]! - positions[a]!;
      const y = positions[b + 1]! - positions[a + 1]!;
      const z = positions[b + 2]! - positions[a + 2]!;
      const flat = Math.sqrt((x * x + y * y) / (x * x + y * y + z * z + 1e-12));
      under[nodes[row]!] = positions[b + 2]! - half[row]! * flat;
    }
  }
  return under;
}
