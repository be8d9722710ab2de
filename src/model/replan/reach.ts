/** What can still be reached from the last woven row, and the nearest to what cannot. */

/** Taken off every reach, as a share, so that a way to its end is never one of rounding alone. */
const slack = 1e-7;

/** A girth at a row. */
export interface Place {
  readonly row: number;
  readonly girth: number;
}

/**
 * The girth nearest to `aim` that can be had at its row, both from `from` (below it) and on the way to
 * `to` (above it), mm. Each row changes by at most `most[row]`, so a girth r rows on lies within the sum of
 * their limits, and every girth within it can be had.
 */
export function nearest(
  aim: Place,
  from: Place,
  to: Place | null,
  most: ArrayLike<number>,
): number {
  const up = reach(most, from.row, aim.row);
  let least = from.girth - up;
  let largest = from.girth + up;
  if (to) {
    const down = reach(most, aim.row, to.row);
    least = Math.max(least, to.girth - down);
    largest = Math.min(largest, to.girth + down);
  }
  return Math.min(Math.max(aim.girth, least), largest);
}

/** The first row from `earliest` on at which `girths` can be met again; null where there is none. */
export function firstMeeting(
  girths: ArrayLike<number>,
  from: Place,
  earliest: number,
  most: ArrayLike<number>,
): number | null {
  for (let row = Math.max(earliest, from.row + 1); row < girths.length; row++) {
    const girth = girths[row] ?? Number.NaN;
    if (Math.abs(girth - from.girth) <= reach(most, from.row, row)) return row;
  }
  return null;
}

/** How far the girth can go between two rows, mm. */
function reach(most: ArrayLike<number>, from: number, to: number): number {
  let sum = 0;
  for (let row = from + 1; row <= to; row++) sum += most[row] ?? 0;
  return sum * (1 - slack);
}
