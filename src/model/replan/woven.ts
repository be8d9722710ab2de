/** The rows woven so far, from the few that were measured. */
import { monotoneCubic } from '../girth/monotone.ts';

/** Tape girth by row number, mm, as a plan's `measured` has it. */
export type GirthByRow = Readonly<Record<string, number>>;

/**
 * How much the tape reads over the girth in the wall's middle, by row, mm, index 0 unused: taken from the
 * settled basket, whose outer face and hollows both are in it.
 */
export function tapeOver(
  rows: readonly { readonly tapeGirth: number; readonly girthReached: number }[],
): Float64Array {
  return Float64Array.from([0, ...rows.map((row) => row.tapeGirth - row.girthReached)]);
}

/**
 * Girth by row of the rows woven, 0 … `done`, mm: measured rows at what the tape read less `over`, rows
 * between two of them off the course as they are. From the base to the first measured row the departure
 * grows evenly; after the last it stays, in proportion.
 *
 * @param course the girths that were woven to, by row from the base, mm
 * @param measured tape girth by row, mm; rows over `done` are left out
 */
export function wovenGirths(
  course: ArrayLike<number>,
  measured: GirthByRow,
  over: ArrayLike<number>,
  done: number,
): Float64Array {
  const rows = measuredRows(measured).filter((row) => row <= done && row < course.length);
  const shares = rows.map((row) => {
    const planned = course[row] ?? Number.NaN;
    return ((measured[row] ?? planned) - (over[row] ?? 0)) / planned - 1;
  });
  const share = monotoneCubic([0, ...rows], [0, ...shares]);
  const length = Math.min(done + 1, course.length);
  return Float64Array.from({ length }, (_, row) => (course[row] ?? 0) * (1 + share(row)));
}

/** The rows that were measured, from the base up. */
export function measuredRows(measured: GirthByRow): number[] {
  return Object.keys(measured)
    .map(Number)
    .sort((one, other) => one - other);
}
