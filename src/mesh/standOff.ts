/**
 * What a stake's turning and bending adds to the distance of a weaver from it.
 * Hot loops over typed arrays: `!` says that an index is inside.
 */
import type { Net } from '../model/net/net.ts';
import { field } from './crossings.ts';

/** The wall that stakes and weavers lie in. */
interface Wall {
  readonly net: Net;
  readonly positions: Float64Array;
  /** Of the wall at each node, outward, of length 1. */
  readonly normals: Float64Array;
  /** Widest that a stake is drawn at each node, mm. */
  readonly room: Float64Array;
}

/** Numbers that `stakeFaces` has of each node. */
const size = 6;

/** At each node of the wall the unit vectors out of the stake's face and across it, as the stake is drawn. */
export function stakeFaces({ net, positions, normals }: Omit<Wall, 'room'>): Float64Array {
  const faces = new Float64Array(size * net.nodeCount);
  for (const { nodes } of net.ends) {
    for (let row = 0; row < nodes.length; row += 1) {
      const at = nodes[row]!;
      const high = 3 * nodes[Math.min(nodes.length - 1, row + 1)]!;
      const low = 3 * nodes[Math.max(0, row - 1)]!;
      const x = positions[high]! - positions[low]!;
      const y = positions[high + 1]! - positions[low + 1]!;
      const z = positions[high + 2]! - positions[low + 2]!;
      const nx = normals[3 * at]!;
      const ny = normals[3 * at + 1]!;
      const nz = normals[3 * at + 2]!;
      // across: upward × outward
      let ax = y * nz - z * ny;
      let ay = z * nx - x * nz;
      let az = x * ny - y * nx;
      const wide = Math.sqrt(ax * ax + ay * ay + az * az) || 1;
      ax /= wide;
      ay /= wide;
      az /= wide;
      const long = Math.sqrt(x * x + y * y + z * z) || 1;
      faces[size * at] = (ay * z - az * y) / long;
      faces[size * at + 1] = (az * x - ax * z) / long;
      faces[size * at + 2] = (ax * y - ay * x) / long;
      faces[size * at + 3] = ax;
      faces[size * at + 4] = ay;
      faces[size * at + 5] = az;
    }
  }
  return faces;
}

/**
 * How much farther off a weaver lies, mm, because the stake turns and bends under it: as far as the stake, which
 * goes straight from row to row, rises over the plane of its middle where the weaver crosses it.
 *
 * @param tangents x, y, z along the weaver; its own at `at`
 * @param sign 1 outside, −1 inside
 * @param data crossings; the weaver's own at `here`, still in the middle of the wall
 */
export function standOff(
  { net, positions, room }: Wall,
  faces: Float64Array,
  row: number,
  end: number,
  tangents: Float64Array,
  at: number,
  sign: number,
  data: Float64Array,
  here: number,
): number {
  const { nodes, width, stake } = net.ends[end]!;
  const thick = net.stakes[stake]!.strand.thickness / 2;
  const px = data[here]!;
  const py = data[here + 1]!;
  const pz = data[here + 2]!;
  const n = here + field.normal;
  const nx = sign * data[n]!;
  const ny = sign * data[n + 1]!;
  const nz = sign * data[n + 2]!;
  // across the weaver
  const cx = ny * tangents[at + 2]! - nz * tangents[at + 1]!;
  const cy = nz * tangents[at]! - nx * tangents[at + 2]!;
  const cz = nx * tangents[at + 1]! - ny * tangents[at]!;
  const wide = data[here + field.width]! / 2;
  let most = 0;
  for (let side = -1; side <= 1; side += 2) {
    // edge of the stake: how far across the weaver and how far over its plane, from row to row
    let before = 0;
    let under = 0;
    const last = Math.min(nodes.length - 1, row + 1);
    for (let step = row - 1; step <= last; step += 1) {
      const node = nodes[step]!;
      const half = (side * Math.min(width, room[node]!)) / 2;
      const f = size * node;
      const x = positions[3 * node]! - px + sign * thick * faces[f]! + half * faces[f + 3]!;
      const y = positions[3 * node + 1]! - py + sign * thick * faces[f + 1]! + half * faces[f + 4]!;
      const z = positions[3 * node + 2]! - pz + sign * thick * faces[f + 2]! + half * faces[f + 5]!;
      const across = x * cx + y * cy + z * cz;
      const over = x * nx + y * ny + z * nz - thick;
      if (Math.abs(across) < wide) most = Math.max(most, over);
      if (step >= row) {
        for (let edge = -wide; edge <= wide; edge += 2 * wide) {
          const share = (edge - before) / (across - before);
          if (share > 0 && share < 1) most = Math.max(most, under + share * (over - under));
        }
      }
      before = across;
      under = over;
    }
  }
  return Math.min(1.5, most);
}
