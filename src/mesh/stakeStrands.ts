/**
 * Stakes as strands: through the base, over and under the stakes that cross it, and up the wall in
 * its middle to a little above the last row.
 * Hot loops over typed arrays: `!` says that an index is inside.
 */
import type { Basket } from '../model/basket.ts';
import type { Net, Stake } from '../model/net/net.ts';
import { strandColour } from '../plan/dyes.ts';
import type { Crossings } from './crossings.ts';
import { crossings, field, stride } from './crossings.ts';
import { sectionOf } from './section.ts';
import type { Strand } from './strandMesh.ts';
import { tangentAt } from './surface.ts';

/** How far a stake stands above the line of the last row, in rows: half a row is clear. */
const overTop = 1.1;

/** Every stake of the net, in its order. */
export function stakeStrands({ net, positions }: Basket, normals: Float64Array): Strand[] {
  const crossed = crossingStakes(net);
  const colour = strandColour('natural');
  return net.stakes.map((stake, index) => ({
    path:
      stake.part === 'added'
        ? addedPath(net, positions, normals, index)
        : stakePath(net, positions, normals, crossed, index),
    section: sectionOf(stake.strand),
    thickness: stake.strand.thickness,
    colour,
    seed: 17,
    between: 1,
    closed: false,
  }));
}

/** For each crossing of the base its two stakes, by index; −1 where there is none. */
function crossingStakes(net: Net): Int16Array {
  const crossed = new Int16Array(2 * net.baseNodeCount).fill(-1);
  net.stakes.forEach(({ nodes, part }, index) => {
    if (part === 'added') return;
    for (const node of nodes) {
      if (node >= net.baseNodeCount) continue;
      crossed[crossed[2 * node] === -1 ? 2 * node : 2 * node + 1] = index;
    }
  });
  return crossed;
}

/** One stake with a place more at each tip that stands above the wall. */
function stakePath(
  net: Net,
  positions: Float64Array,
  normals: Float64Array,
  crossed: Int16Array,
  index: number,
): Crossings {
  const stake = net.stakes[index]!;
  const { nodes, ends } = stake;
  const inner = nodes.length;
  const head = ends[0] >= 0 ? 1 : 0;
  const path = crossings(inner + head + (ends[1] >= 0 ? 1 : 0));
  path.strand.fill(index);
  for (let at = 0; at < inner; at += 1) {
    copyNode(path, at + head, nodes[at]!, positions, normals);
    path.data[(at + head) * stride + field.width] = stake.width[at]!;
  }
  const pitch = net.rows.at(-1)?.pitch ?? 0;
  if (head === 1) stand(path, 0, 1, 2, pitch);
  if (ends[1] >= 0) stand(path, path.count - 1, path.count - 2, path.count - 3, pitch);
  turn(path);
  for (let at = 0; at < inner; at += 1) {
    const node = nodes[at]!;
    if (node < net.baseNodeCount) interlace(path, at + head, net, crossed, node, index);
  }
  return path;
}

/**
 * The second half of a split stake, or an end added beside another. It begins at the base's edge,
 * to that side of its fellow on which it goes on, and half a thickness further in.
 */
function addedPath(
  net: Net,
  positions: Float64Array,
  normals: Float64Array,
  index: number,
): Crossings {
  const stake = net.stakes[index]!;
  const first = Math.max(0, stake.edge[1]);
  const count = stake.nodes.length - first;
  const path = crossings(count + 1);
  path.strand.fill(index);
  for (let at = 0; at < count; at += 1) {
    copyNode(path, at, stake.nodes[first + at]!, positions, normals);
    path.data[at * stride + field.width] = stake.width.at(-1) ?? 0;
  }
  if (count > 1) {
    const { data } = path;
    const [nx, ny, nz] = [data[field.normal]!, data[field.normal + 1]!, data[field.normal + 2]!];
    const [x, y] = [data[stride]! - data[0]!, data[stride + 1]! - data[1]!];
    const out = nx * x + ny * y;
    const inward = stake.strand.thickness / 2;
    data[0]! += x - out * nx - inward * nx;
    data[1]! += y - out * ny - inward * ny;
    data[2]! -= inward * nz;
  }
  stand(path, count, count - 1, count - 2, net.rows.at(-1)?.pitch ?? 0);
  turn(path);
  return path;
}

/** The position and normal of a node. */
function copyNode(
  path: Crossings,
  at: number,
  node: number,
  positions: Float64Array,
  normals: Float64Array,
): void {
  for (let axis = 0; axis < 3; axis += 1) {
    path.data[at * stride + axis] = positions[3 * node + axis]!;
    path.data[at * stride + field.normal + axis] = normals[3 * node + axis]!;
  }
}

/** Puts the tip beyond the stake's last node, straight on from the one before. */
function stand(path: Crossings, tip: number, last: number, before: number, pitch: number): void {
  const { data } = path;
  const [t, l] = [tip * stride, last * stride];
  const b = before >= 0 && before < path.count ? before * stride : l;
  const x = data[l]! - data[b]!;
  const y = data[l + 1]! - data[b + 1]!;
  const z = data[l + 2]! - data[b + 2]!;
  const size = Math.sqrt(x * x + y * y + z * z);
  const on = size > 0 ? (overTop * pitch) / size : 0;
  data[t] = data[l]! + on * x;
  data[t + 1] = data[l + 1]! + on * y;
  data[t + 2] = data[l + 2]! + on * z;
  for (let at = field.normal; at < field.normal + 3; at += 1) data[t + at] = data[l + at]!;
  data[t + field.width] = data[l + field.width]!;
}

/** The direction of travel at each place. */
function turn({ data, count }: Crossings): void {
  for (let at = 0; at < count; at += 1) {
    const here = at * stride;
    const before = at > 0 ? here - stride : here;
    const after = at + 1 < count ? here + stride : here;
    tangentAt(data, here + field.tangent, data, before, here, after, data, here + field.normal);
  }
}

/**
 * Moves a crossing of the base to its side of the stake it crosses: stakes of the two parts lie
 * over and under in turn, like the squares of a chessboard.
 */
function interlace(
  path: Crossings,
  at: number,
  net: Net,
  crossed: Int16Array,
  node: number,
  index: number,
): void {
  const stake = net.stakes[index]!;
  const otherIndex = crossed[2 * node] === index ? crossed[2 * node + 1]! : crossed[2 * node]!;
  const other = net.stakes[otherIndex];
  if (other === undefined) return;
  const isUnder = (stake.index + other.index) % 2 === (isLengthwise(stake) ? 0 : 1);
  // the normal points down, out of the base
  const off = ((isUnder ? 1 : -1) * other.strand.thickness) / 2;
  const here = at * stride;
  const { data } = path;
  for (let axis = 0; axis < 3; axis += 1)
    data[here + axis]! += off * data[here + field.normal + axis]!;
  const nearest = Math.min(
    gap(data, here - stride, here, at > 0),
    gap(data, here, here + stride, at + 1 < path.count),
  );
  data[here + field.bearing] = Math.min(other.strand.width / 2, 0.38 * nearest);
  path.bears[at] = 1;
}

function isLengthwise(stake: Stake): boolean {
  return stake.part === 'lengthwise';
}

/** Distance between two places, or no limit where `exists` is false. */
function gap(data: Float64Array, one: number, other: number, exists: boolean): number {
  if (!exists) return Number.POSITIVE_INFINITY;
  return Math.hypot(
    data[other]! - data[one]!,
    data[other + 1]! - data[one + 1]!,
    data[other + 2]! - data[one + 2]!,
  );
}
