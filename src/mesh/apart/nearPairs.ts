/** Hot loops over typed arrays: `!` says that an index is inside. */
import type { Pieces } from './pieces.ts';
import { box, boxSize } from './pieces.ts';

/** Pieces are looked up by cubes of so many times the nearness asked for, */
const cubes = 70;
/** but by larger ones where there would be more cubes for a piece than this: thin strands in a large basket. */
const cubesOfPiece = 8;
/** Places of one strand that are nearer to each other than this are neighbours. */
const neighbours = 5;

/**
 * Every two pieces that come within `near` mm of each other, but for neighbours in one strand.
 *
 * @param closed of each strand, whether its last place leads on to its first
 * @returns numbers of the pieces, in twos
 */
export function nearPairs(
  { boxes, count, from, strand, along, places }: Pieces,
  closed: readonly boolean[],
  near: number,
): number[] {
  // of each piece its least and greatest x, y, z, as far from the least of all
  const bounds = new Float64Array(6 * count);
  const most = [0, 0, 0];
  for (let axis = 0; axis < 3; axis += 1) {
    let origin = Number.POSITIVE_INFINITY;
    for (let piece = 0; piece < count; piece += 1) {
      const at = boxSize * piece;
      let reach = near / 2;
      for (let k = 0; k < 3; k += 1)
        reach += boxes[at + box.half + k]! * Math.abs(boxes[at + 3 * k + axis]!);
      const middle = boxes[at + box.middle + axis]!;
      bounds[6 * piece + axis] = middle - reach;
      bounds[6 * piece + 3 + axis] = middle + reach;
      if (middle - reach < origin) origin = middle - reach;
    }
    for (let at = axis; at < bounds.length; at += 3) {
      bounds[at]! -= origin;
      if (bounds[at]! > most[axis]!) most[axis] = bounds[at]!;
    }
  }
  const room = most.reduce((product, value) => product * (value + near), 1);
  const cube = Math.max(cubes * near, Math.cbrt(room / (cubesOfPiece * count)));
  const [nx, ny, nz] = most.map((value) => Math.floor(value / cube) + 1) as [
    number,
    number,
    number,
  ];
  // where in `list` the pieces of each cube begin: counted in the first turn, filled in from behind in the second
  const begin = new Int32Array(nx * ny * nz + 1);
  let list = new Int32Array(0);
  for (let turn = 0; turn < 2; turn += 1) {
    for (let at = 0; at < bounds.length; at += 6) {
      const x1 = (bounds[at + 3]! / cube) | 0;
      const y0 = (bounds[at + 1]! / cube) | 0;
      const y1 = (bounds[at + 4]! / cube) | 0;
      const z0 = (bounds[at + 2]! / cube) | 0;
      const z1 = (bounds[at + 5]! / cube) | 0;
      for (let x = (bounds[at]! / cube) | 0; x <= x1; x += 1) {
        for (let y = y0; y <= y1; y += 1) {
          const last = (x * ny + y) * nz + z1;
          for (let one = last - z1 + z0; one <= last; one += 1) {
            if (turn === 0) begin[one]! += 1;
            else {
              begin[one]! -= 1;
              list[begin[one]!] = at / 6;
            }
          }
        }
      }
    }
    if (turn > 0) break;
    for (let at = 1; at < begin.length; at += 1) begin[at]! += begin[at - 1]!;
    list = new Int32Array(begin.at(-1)!);
  }
  const found: number[] = [];
  for (let at = 0; at + 1 < begin.length; at += 1) {
    const end = begin[at + 1]!;
    for (let one = begin[at]!; one < end; one += 1) {
      const i = list[one]!;
      const a = 6 * i;
      const s = strand[from[i]!]!;
      const x0 = bounds[a]!;
      const y0 = bounds[a + 1]!;
      const z0 = bounds[a + 2]!;
      const x1 = bounds[a + 3]!;
      const y1 = bounds[a + 4]!;
      const z1 = bounds[a + 5]!;
      for (let other = one + 1; other < end; other += 1) {
        const j = list[other]!;
        const b = 6 * j;
        if (bounds[b]! > x1 || bounds[b + 3]! < x0 || bounds[b + 1]! > y1) continue;
        if (bounds[b + 4]! < y0 || bounds[b + 2]! > z1 || bounds[b + 5]! < z0) continue;
        const t = strand[from[j]!]!;
        if (s === t) {
          const apart = Math.abs(along[from[i]!]! - along[from[j]!]!);
          if (apart < neighbours || (closed[s] && places[s]! - apart < neighbours)) continue;
        }
        // two that share several cubes are found in the first of them
        const x = (Math.max(x0, bounds[b]!) / cube) | 0;
        const y = (Math.max(y0, bounds[b + 1]!) / cube) | 0;
        const z = (Math.max(z0, bounds[b + 2]!) / cube) | 0;
        if ((x * ny + y) * nz + z === at) found.push(i, j);
      }
    }
  }
  return found;
}
