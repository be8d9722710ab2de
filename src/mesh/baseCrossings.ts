/**
 * How stakes lie in the base: the two parts of a mat over and under in turn, the spokes of a wheel
 * stacked on one another at the hub, stakes laid in with a pointed tip.
 * Hot loops over typed arrays: `!` says that an index is inside.
 */
import type { Basket } from '../model/basket.ts';
import type { Net, Stake } from '../model/net/net.ts';
import type { Crossings } from './crossings.ts';
import { field, stride } from './crossings.ts';

/** For each crossing of a mat its two stakes, by index; −1 where there is none. */
export type Crossed = Int16Array;

/** Width of the tip of a stake that is laid in, over its own. */
const tip = 0.3;

/** The stakes that cross at each node of the base. */
export function crossedStakes(net: Net): Crossed {
  const crossed = new Int16Array(2 * net.baseNodeCount).fill(-1);
  net.stakes.forEach((stake, index) => {
    if (!isOfMat(stake)) return;
    for (const node of stake.nodes) {
      if (node >= net.baseNodeCount) continue;
      crossed[crossed[2 * node] === -1 ? 2 * node : 2 * node + 1] = index;
    }
  });
  return crossed;
}

/**
 * Moves the places of stake `index` that are in the base to where it lies there.
 *
 * @param nodes places of `stake.nodes` that `path` shows, from its place `head` on
 */
export function layInBase(
  path: Crossings,
  { net }: Basket,
  crossed: Crossed,
  index: number,
  nodes: readonly number[],
  head: number,
): void {
  const stake = net.stakes[index]!;
  nodes.forEach((place, at) => {
    const node = stake.nodes[place]!;
    if (node >= net.baseNodeCount) return;
    if (isOfMat(stake)) interlace(path, at + head, net, crossed, node, index);
  });
  if (isOfMat(stake)) holdEdges(path, stake, nodes, head);
  if (stake.part === 'spoke') stack(path, net, stake, nodes, head);
  if (stake.part === 'fanned') pointFan(path, stake);
}

/**
 * Moves a crossing of a mat to its side of the stake it crosses: stakes of the two parts lie over and
 * under in turn, like the squares of a chessboard.
 */
function interlace(
  path: Crossings,
  at: number,
  net: Net,
  crossed: Crossed,
  node: number,
  index: number,
): void {
  const stake = net.stakes[index]!;
  const otherIndex = crossed[2 * node] === index ? crossed[2 * node + 1]! : crossed[2 * node]!;
  const other = net.stakes[otherIndex];
  if (other === undefined) return;
  const isUnder = (stake.index + other.index) % 2 === (stake.part === 'lengthwise' ? 0 : 1);
  // the normal points down, out of the base
  shift(path, at, ((isUnder ? 1 : -1) * other.strand.thickness) / 2);
  path.data[at * stride + field.bearing] = other.strand.width / 2;
  path.bears[at] = 1;
}

/** Where the edge of a mat is drawn, the stake keeps its side as far as there. */
function holdEdges(path: Crossings, stake: Stake, nodes: readonly number[], head: number): void {
  const { data } = path;
  for (const [side, inward] of [
    [0, 1],
    [1, -1],
  ] as const) {
    const at = stake.edge[side] < 0 ? -1 : nodes.indexOf(stake.edge[side]);
    if (at < 0) continue;
    const here = (at + head) * stride;
    const next = here + inward * stride;
    if (path.bears[at + head + inward] !== 1) continue;
    const way = [0, 1, 2].map((axis) => data[here + axis]! - data[next + axis]!);
    const size = Math.hypot(...way);
    // a border woven round the mat has its own places there
    if (size > 0.7 * stake.strand.width) continue;
    data[next + field.bearing] = Math.min(data[next + field.bearing]!, 0.6 * size);
    // the stake it crosses is at its own edge here and has as little room to lie flat in
    data[next + field.width] = Math.min(data[next + field.width]!, 2 * data[next + field.bearing]!);
    const flat = way.reduce(
      (sum, value, axis) => sum + value * data[next + field.normal + axis]!,
      0,
    );
    for (let axis = 0; axis < 3; axis += 1) {
      data[here + axis]! -= flat * data[next + field.normal + axis]!;
    }
  }
}

/**
 * A spoke at the hub: each lies on the one before, up into the basket, flat across the hub; all come
 * back to one level on their way to the next ring.
 */
function stack(
  path: Crossings,
  net: Net,
  stake: Stake,
  nodes: readonly number[],
  head: number,
): void {
  const hub = nodes.findIndex((place) => net.ring[stake.nodes[place]!] === 0);
  if (hub < 0) return;
  const high = -stake.index * stake.strand.thickness;
  const { data } = path;
  const middle = (hub + head) * stride;
  const up = data.slice(middle + field.normal, middle + field.normal + 3);
  const widest = Math.min(
    data[middle - stride + field.width]!,
    data[middle + stride + field.width]!,
  );
  for (let at = hub + head - 1; at <= hub + head + 1; at += 1) {
    const here = at * stride;
    // all three on one level: spokes that cross under each other do not rise to meet them
    data.set(up, here + field.normal);
    for (let axis = 0; axis < 3; axis += 1) data[here + axis]! += high * up[axis]!;
    data[here + field.width] = widest;
  }
}

/** A stake laid in at a corner of the mat begins beside the stakes that cross there, with a pointed tip. */
function pointFan(path: Crossings, stake: Stake): void {
  const { data } = path;
  const size = Math.hypot(
    data[stride]! - data[0]!,
    data[stride + 1]! - data[1]!,
    data[stride + 2]! - data[2]!,
  );
  const share = Math.min(0.7, (0.78 * stake.strand.width) / size);
  for (let axis = 0; axis < 3; axis += 1) {
    data[axis]! += share * (data[stride + axis]! - data[axis]!);
  }
  data[field.width] = tip * stake.strand.width;
}

/** Moves a place along its normal. */
function shift({ data }: Crossings, at: number, off: number): void {
  const here = at * stride;
  for (let axis = 0; axis < 3; axis += 1) {
    data[here + axis]! += off * data[here + field.normal + axis]!;
  }
}

function isOfMat({ part }: Stake): boolean {
  return part === 'lengthwise' || part === 'crosswise';
}
