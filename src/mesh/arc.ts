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
export function arcPlace({ data, bears }: Crossings, from: number, to: number, share: number) {
  const isBack = to < from;
  const [low, high] = isBack ? [to, from] : [from, to];
  const t = isBack ? 1 - share : share;
  const [a, b] = [low * stride, high * stride];
  const half = bears[low] === 1 ? data[a + field.bearing]! : 0;
  const reach = bears[high] === 1 ? data[b + field.bearing]! : 0;
  const s = 1 - t;
  const start = [0, 1, 2].map((d) => data[a + d]! + half * data[a + field.tangent + d]!);
  const end = [0, 1, 2].map((d) => data[b + d]! - reach * data[b + field.tangent + d]!);
  const size = Math.hypot(...start.map((value, d) => end[d]! - value));
  const position = [0, 1, 2].map(
    (d) =>
      s * s * (1 + 2 * t) * start[d]! +
      t * t * (1 + 2 * s) * end[d]! +
      size * s * s * t * data[a + field.tangent + d]! -
      size * t * t * s * data[b + field.tangent + d]!,
  );
  const way = [0, 1, 2].map(
    (d) =>
      6 * t * s * (end[d]! - start[d]!) +
      size * s * (1 - 3 * t) * data[a + field.tangent + d]! +
      size * t * (1 - 3 * s) * data[b + field.tangent + d]!,
  );
  const normal = [0, 1, 2].map(
    (d) => s * data[a + field.normal + d]! + t * data[b + field.normal + d]!,
  );
  const along = Math.hypot(...way) || 1;
  const slope = way.reduce((sum, value, d) => sum + (value / along) * normal[d]!, 0);
  const face = normal.map((value, d) => value - slope * (way[d]! / along));
  const tall = Math.hypot(...face) || 1;
  return {
    position: position as unknown as ArcPlace['position'],
    face: face.map((value) => value / tall) as unknown as ArcPlace['face'],
    width: s * data[a + field.width]! + t * data[b + field.width]!,
  };
}
