/**
 * A place between two crossings of a strand, as `sweep.ts` draws it there.
 * Hot loops over typed arrays: `!` says that an index is inside.
 */
import type { Crossings } from './crossings.ts';
import { field, stride } from './crossings.ts';

export interface ArcPlace {
  /** Middle of the strand, mm. */
  readonly position: readonly [number, number, number];
  /** Unit vector out of its face. */
  readonly face: readonly [number, number, number];
  readonly width: number;
}

/** The strand `share` of the way over the gap from place `from` to place `to` (its neighbour). */
export function arcPlace(
  { data, bears }: Crossings,
  from: number,
  to: number,
  share: number,
): ArcPlace {
  const isBack = to < from;
  const t = isBack ? 1 - share : share;
  const s = 1 - t;
  const [low, high] = isBack ? [to, from] : [from, to];
  const [a, b] = [low * stride, high * stride];
  const half = bears[low] === 1 ? data[a + field.bearing]! : 0;
  const reach = bears[high] === 1 ? data[b + field.bearing]! : 0;
  const [ax, ay, az] = [data[a + 3]!, data[a + 4]!, data[a + 5]!];
  const [bx, by, bz] = [data[b + 3]!, data[b + 4]!, data[b + 5]!];
  const [px, py, pz] = [data[a]! + half * ax, data[a + 1]! + half * ay, data[a + 2]! + half * az];
  const x = data[b]! - reach * bx - px;
  const y = data[b + 1]! - reach * by - py;
  const z = data[b + 2]! - reach * bz - pz;
  const size = Math.sqrt(x * x + y * y + z * z);
  // Hermite basis: way from the first place to the second, then tangents of length `size`; and its slope
  const on = t * t * (1 + 2 * s);
  const [out, into] = [size * s * s * t, -size * t * t * s];
  const slope = 6 * t * s;
  const [outSlope, intoSlope] = [size * s * (1 - 3 * t), size * t * (1 - 3 * s)];
  const dx = slope * x + outSlope * ax + intoSlope * bx;
  const dy = slope * y + outSlope * ay + intoSlope * by;
  const dz = slope * z + outSlope * az + intoSlope * bz;
  const squared = dx * dx + dy * dy + dz * dz || 1;
  const nx = s * data[a + 6]! + t * data[b + 6]!;
  const ny = s * data[a + 7]! + t * data[b + 7]!;
  const nz = s * data[a + 8]! + t * data[b + 8]!;
  // the face square to the way
  const along = (nx * dx + ny * dy + nz * dz) / squared;
  const [fx, fy, fz] = [nx - along * dx, ny - along * dy, nz - along * dz];
  const tall = Math.sqrt(fx * fx + fy * fy + fz * fz) || 1;
  return {
    position: [
      px + on * x + out * ax + into * bx,
      py + on * y + out * ay + into * by,
      pz + on * z + out * az + into * bz,
    ],
    face: [fx / tall, fy / tall, fz / tall],
    width: s * data[a + field.width]! + t * data[b + field.width]!,
  };
}
