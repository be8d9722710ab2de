/**
 * Stakes as strands: through the base, over and under what crosses them there, and up the wall in its
 * middle.
 * Hot loops over typed arrays: `!` says that an index is inside.
 */
import { drawnWords } from '#words/drawn.ts';
import type { Basket } from '../model/basket.ts';
import type { Net, Stake } from '../model/net/net.ts';
import { strandColour } from '../plan/dyes.ts';
import type { Crossed } from './baseCrossings.ts';
import { crossedStakes, layInBase } from './baseCrossings.ts';
import type { Crossings } from './crossings.ts';
import { crossings, field, stride } from './crossings.ts';
import { stakeRoom } from './room.ts';
import { sectionOf } from './section.ts';
import type { Strand } from './strandMesh.ts';
import { tangentAt } from './surface.ts';

/** Every stake of the net, in its order; `over` is how far it stands over the line of the last row, mm. */
export function stakeStrands(basket: Basket, normals: Float64Array, over: number): Strand[] {
  const { net } = basket;
  const ground: Ground = {
    basket,
    normals,
    over,
    room: stakeRoom(basket),
    crossed: crossedStakes(net),
    fellow: fellows(net),
  };
  const colour = strandColour('natural');
  return net.stakes.map((stake, index) => ({
    name: drawnWords.stakes[stake.part](stake.index + 1),
    path: stakePath(ground, index),
    section: sectionOf(stake.strand),
    thickness: stake.strand.thickness,
    colour,
    seed: 17,
    between: 1,
    // rows follow each other closely up the wall
    sparse: true,
    closed: false,
  }));
}

/** What every stake is laid on. */
interface Ground {
  readonly basket: Basket;
  readonly normals: Float64Array;
  readonly over: number;
  readonly room: Float64Array;
  readonly crossed: Crossed;
  /** For each end the other end at its place on the base's edge, or −1. */
  readonly fellow: Int32Array;
}

/** Ends that start from one node of the base's edge, each with the other. */
function fellows({ ends }: Net): Int32Array {
  const fellow = new Int32Array(ends.length).fill(-1);
  ends.forEach(({ nodes }, end) => {
    const next = end + 1 < ends.length ? end + 1 : 0;
    if (next === end || ends[next]!.nodes[0] !== nodes[0]) return;
    fellow[end] = next;
    fellow[next] = end;
  });
  return fellow;
}

/** One stake with a place more at each tip that stands above the wall. */
function stakePath(ground: Ground, index: number): Crossings {
  const { net } = ground.basket;
  const stake = net.stakes[index]!;
  const nodes = drawnNodes(net, stake, sharesPlace(ground, stake));
  const head = stake.ends[0] >= 0 ? 1 : 0;
  const tail = stake.ends[1] >= 0 ? 1 : 0;
  const path = crossings(nodes.length + head + tail);
  const { data } = path;
  path.strand.fill(index);
  nodes.forEach((place, at) => {
    const node = stake.nodes[place]!;
    const here = (at + head) * stride;
    for (let axis = 0; axis < 3; axis += 1) {
      data[here + axis] = ground.basket.positions[3 * node + axis]!;
      data[here + field.normal + axis] = ground.normals[3 * node + axis]!;
    }
    data[here + field.width] = Math.min(stake.width[place]!, ground.room[node]!);
  });
  if (head === 1) stand(path, 0, 1, 2, ground.over);
  if (tail === 1) {
    const last = path.count - 1;
    stand(path, last, last - 1, last - 2, ground.over);
  }
  turn(path);
  for (const side of [0, 1] as const)
    if (stake.ends[side] >= 0) rise(ground, path, stake, side, nodes, head);
  layInBase(path, ground.basket, ground.crossed, index, nodes, head);
  if (!sharesPlace(ground, stake)) {
    ([1, -1] as const).forEach((inward, side) => {
      const at = stake.edge[side]! < 0 ? -1 : nodes.indexOf(stake.edge[side]!);
      if (at >= 0) foldAtEdge(path, at + head, inward, stake.strand.thickness);
    });
  }
  return path;
}

/** Whether a stake is the second one at its place on the base's edge: half of a split one, or added. */
function sharesPlace({ fellow }: Ground, { part, ends }: Stake): boolean {
  return part === 'added' && ends[1] >= 0 && fellow[ends[1]]! >= 0;
}

/**
 * The places along `stake.nodes` that are drawn. In a mat the edge of the base is the edge of the stake
 * that lies along it, and the strand is flat there: its next place is in the first row, but for the
 * corner stakes, which are narrowed at the edge to clear each other. A second stake
 * at a place begins in the first row, where its fellow leaves it room.
 */
function drawnNodes(net: Net, stake: Stake, isSecond: boolean): number[] {
  const places = Array.from(stake.nodes.keys());
  if (isSecond) return places.slice(stake.edge[1] + 1);
  const isOfMat = stake.part === 'lengthwise' || stake.part === 'crosswise';
  if (!isOfMat || net.rows.length < 2) return places;
  const isCorner = (side: 0 | 1) => net.ends[stake.ends[side]]?.corner === true;
  return places.filter((place) => {
    const side = stake.edge.indexOf(place);
    return side < 0 || isBordered(stake, place) || isCorner(side === 0 ? 0 : 1);
  });
}

/** Whether a border is woven between the mat and this edge: then the last steps are all alike. */
function isBordered({ edge, rest, strand }: Stake, place: number): boolean {
  const inward = place === edge[0] ? rest[place]! : rest[place - 1]!;
  return inward > 0.75 * strand.width;
}

/**
 * A stake that leaves the base free runs out flat and turns up just short of the edge, so that it does
 * not bulge out under the first rows.
 *
 * @param inward 1 where the next place is further in, −1 where the one before is
 */
function foldAtEdge({ data }: Crossings, at: number, inward: 1 | -1, thickness: number): void {
  const here = at * stride;
  const next = here + inward * stride;
  const way = [0, 1, 2].map((axis) => data[here + axis]! - data[next + axis]!);
  const size = Math.hypot(...way);
  if (!(size > 2 * thickness)) return;
  for (let axis = 0; axis < 3; axis += 1) {
    const on = way[axis]! / size;
    data[here + axis]! -= 1.2 * thickness * on;
    data[here + field.tangent + axis] = -inward * on;
    data[here + field.normal + axis] = data[next + field.normal + axis]!;
  }
}

/** In the first row a stake goes as the net does from the base's edge to the second row. */
function rise(
  { basket, normals }: Ground,
  { data }: Crossings,
  stake: Stake,
  side: 0 | 1,
  nodes: readonly number[],
  head: number,
): void {
  const up = side === 0 ? -1 : 1;
  const edge = stake.edge[side];
  const at = nodes.indexOf(edge + up);
  const [low, here, high] = [0, 1, 2].map((step) => stake.nodes[edge + up * step] ?? -1);
  if (at < 0 || high! < 0) return;
  const [before, after] = side === 0 ? [high!, low!] : [low!, high!];
  const out = (at + head) * stride + field.tangent;
  tangentAt(data, out, basket.positions, 3 * before, 3 * here!, 3 * after, normals, 3 * here!);
}

/** Puts the tip `over` mm beyond the stake's last node, straight on from the one before. */
function stand(path: Crossings, tip: number, last: number, before: number, over: number): void {
  const { data } = path;
  const [t, l] = [tip * stride, last * stride];
  const b = before >= 0 && before < path.count ? before * stride : l;
  const x = data[l]! - data[b]!;
  const y = data[l + 1]! - data[b + 1]!;
  const z = data[l + 2]! - data[b + 2]!;
  const size = Math.hypot(x, y, z);
  const on = size > 0 ? over / size : 0;
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
