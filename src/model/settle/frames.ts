import type { Net } from '../net/net.ts';
import type { Elements } from './elements.ts';
import type { Frames } from './energy.ts';

/** Room for the frames of `elements`. */
export function frames(elements: Elements): Frames {
  return {
    up: new Float64Array(3),
    natural: new Float64Array(3 * elements.bend.before.length),
    hold: new Float64Array(3 * elements.loop.nodes.length),
  };
}

/**
 * Turns the frames with the shape `x`: the base's upward normal; the set turns of base stakes, which point
 * down along it; and those of the weavers, which point inward, across the weaver's run and the stake below.
 */
export function turnFrames(net: Net, elements: Elements, x: Float64Array, into: Frames): void {
  baseNormal(net, x, into.up);
  const [ux, uy, uz] = into.up as unknown as [number, number, number];
  const { bend, loop } = elements;
  for (let i = 0; i < bend.before.length; i++) {
    const size = bend.natural[i]!;
    if (size === 0) continue;
    const a = 3 * bend.nodes[3 * i]!;
    const c = 3 * bend.nodes[3 * i + 2]!;
    const tx = x[c]! - x[a]!;
    const ty = x[c + 1]! - x[a + 1]!;
    const tz = x[c + 2]! - x[a + 2]!;
    const along = (ux * tx + uy * ty + uz * tz) / (tx * tx + ty * ty + tz * tz + 1e-12);
    // A raised middle is curved downward.
    put(into.natural, i, -size, ux - along * tx, uy - along * ty, uz - along * tz);
  }
  for (let r = 0; r + 1 < loop.first.length; r++) {
    const from = loop.first[r]!;
    const to = loop.first[r + 1]!;
    for (let j = from; j < to; j++) {
      const size = loop.hold[j]!;
      if (size === 0) continue;
      const here = 3 * loop.nodes[j]!;
      const low = 3 * loop.below[j]!;
      const before = 3 * loop.nodes[j > from ? j - 1 : to - 1]!;
      const after = 3 * loop.nodes[j + 1 < to ? j + 1 : from]!;
      const tx = x[after]! - x[before]!;
      const ty = x[after + 1]! - x[before + 1]!;
      const tz = x[after + 2]! - x[before + 2]!;
      const sx = x[here]! - x[low]!;
      const sy = x[here + 1]! - x[low + 1]!;
      const sz = x[here + 2]! - x[low + 2]!;
      put(into.hold, j, size, sy * tz - sz * ty, sz * tx - sx * tz, sx * ty - sy * tx);
    }
  }
}

/** Upward normal of the base from its four corner crossings (unit vector, into `up`). */
export function baseNormal(net: Net, x: Float64Array, up: Float64Array): void {
  const [p, q, r, s] = net.frame.map((node) => 3 * node) as [number, number, number, number];
  const ax = x[r]! - x[p]!;
  const ay = x[r + 1]! - x[p + 1]!;
  const az = x[r + 2]! - x[p + 2]!;
  const bx = x[s]! - x[q]!;
  const by = x[s + 1]! - x[q + 1]!;
  const bz = x[s + 2]! - x[q + 2]!;
  put(up, 0, 1, ay * bz - az * by, az * bx - ax * bz, ax * by - ay * bx);
}

function put(to: Float64Array, i: number, size: number, x: number, y: number, z: number): void {
  const length = Math.sqrt(x * x + y * y + z * z) + 1e-12;
  to[3 * i] = (size * x) / length;
  to[3 * i + 1] = (size * y) / length;
  to[3 * i + 2] = (size * z) / length;
}
