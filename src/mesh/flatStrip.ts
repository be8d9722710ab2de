/**
 * A strand as it is seen from one side.
 * Hot loops over typed arrays: `!` says that an index is inside.
 */
import { hullFromAbove } from '../model/read/hullFromAbove.ts';
import type { FlatLine } from './flatLines.ts';
import { reversed } from './flatLines.ts';

/**
 * The closed line round a strand, from the corners of its section at each place, x, y, x, y, …: both of its
 * edges; for one that is seen edge on, going away from the eye and coming back, the hull of all corners.
 */
export function flatStrip(sections: readonly (readonly number[])[]): FlatLine {
  const middles = sections.map(middleOf);
  const wide = (axis: 0 | 1) => {
    const values = middles.map((middle) => middle[axis]);
    return Math.max(...values) - Math.min(...values);
  };
  const across = Math.max(...sections.map((corners) => spanOf(corners)));
  if (Math.min(wide(0), wide(1)) < across / 2) return hull(sections.flat());
  const left: number[] = [];
  const right: number[] = [];
  sections.forEach((corners, at) => {
    const [from, to] = [
      middles[Math.max(0, at - 1)]!,
      middles[Math.min(middles.length - 1, at + 1)]!,
    ];
    const [x, y] = middles[at]!;
    const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
    const long = Math.hypot(dx, dy) || 1;
    const [px, py] = [-dy / long, dx / long];
    let half = 0;
    for (let corner = 0; corner < corners.length; corner += 2) {
      half = Math.max(half, (corners[corner]! - x) * px + (corners[corner + 1]! - y) * py);
    }
    left.push(x + half * px, y + half * py);
    right.push(x - half * px, y - half * py);
  });
  return [...left, ...reversed(right)];
}

function middleOf(corners: readonly number[]): readonly [number, number] {
  const count = corners.length / 2;
  let [x, y] = [0, 0];
  for (let at = 0; at < corners.length; at += 2) {
    x += corners[at]! / count;
    y += corners[at + 1]! / count;
  }
  return [x, y];
}

/** The longest way across a section. */
function spanOf(corners: readonly number[]): number {
  const [x, y] = middleOf(corners);
  let most = 0;
  for (let at = 0; at < corners.length; at += 2) {
    most = Math.max(most, 2 * Math.hypot(corners[at]! - x, corners[at + 1]! - y));
  }
  return most;
}

/** The convex hull of points x, y, x, y, …, counter-clockwise. */
function hull(flat: readonly number[]): FlatLine {
  const count = flat.length / 2;
  const points = Array.from({ length: count }, (_, at) => [flat[2 * at]!, flat[2 * at + 1]!, 0]);
  const all = Array.from({ length: count }, (_, at) => at);
  return hullFromAbove(points.flat(), all).flatMap((at) => points[at]!.slice(0, 2));
}
