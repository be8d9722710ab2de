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
}

/**
 * How much farther off a weaver lies, mm, because the stake turns and bends under it: along the weaver,
 * where rows climb and cross the stake at a slant, and along the stake, over the weaver's width.
 *
 * @param tangents x, y, z along the weaver; its own at `at`
 * @param sign 1 outside, −1 inside
 * @param data crossings; the weaver's own with width and bearing at `here`
 */
export function standOff(
  { net, positions, normals }: Wall,
  row: number,
  end: number,
  tangents: Float64Array,
  at: number,
  sign: number,
  data: Float64Array,
  here: number,
): number {
  const { nodes } = net.ends[end]!;
  const high = 3 * nodes[Math.min(nodes.length - 1, row + 1)]!;
  const low = 3 * nodes[row - 1]!;
  const x = positions[high]! - positions[low]!;
  const y = positions[high + 1]! - positions[low + 1]!;
  const z = positions[high + 2]! - positions[low + 2]!;
  const squared = x * x + y * y + z * z;
  if (!(squared > 1e-9)) return 0;
  const size = Math.sqrt(squared);
  const nx = (normals[high]! - normals[low]!) / size;
  const ny = (normals[high + 1]! - normals[low + 1]!) / size;
  const nz = (normals[high + 2]! - normals[low + 2]!) / size;
  const [tx, ty, tz] = [tangents[at]!, tangents[at + 1]!, tangents[at + 2]!];
  const slant = (tx * x + ty * y + tz * z) / size;
  const square = Math.sqrt(Math.max(1e-6, 1 - slant * slant));
  const bend = -(nx * x + ny * y + nz * z) / size;
  const twist = (-(nx * tx + ny * ty + nz * tz) - slant * bend) / square;
  const half = data[here + field.bearing]!;
  const wide = data[here + field.width]! / 2;
  const [u, v] = [half * slant, half * square];
  const [upward, aside] = [wide * square, -wide * slant];
  // the weaver lies on the highest point under it: at a corner or an edge of where it crosses
  const most = Math.max(
    sign * faceRise(u, v, twist, bend),
    sign * faceRise(upward, aside, twist, bend),
    sign * faceRise(u + upward, v + aside, twist, bend),
    sign * faceRise(u - upward, v - aside, twist, bend),
  );
  return Math.min(1.5, Math.max(0, most));
}

/** How far a stake's face rises over its plane `u` mm up the stake and `v` mm across it, as it turns. */
function faceRise(u: number, v: number, twist: number, bend: number): number {
  return u * (twist * v + (bend / 2) * u);
}
