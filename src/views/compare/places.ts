/** From a place of the comparison to a row of each basket, and back. */
import type { Side } from '../../keep/compareStudio.ts';
import type { Differences } from '../../model/compare/differences.ts';

/** The row of each basket at a place; null where there is none. */
export function rowsAt(
  differences: Differences | null,
  place: number | null,
): Readonly<Record<Side, number | null>> {
  const found = differences?.places.find((one) => one.place === place);
  return { a: found?.rowA ?? null, b: found?.rowB ?? null };
}

/** The place at which a basket's row stands, or null. */
export function placeOfRow({ places }: Differences, side: Side, row: number | null): number | null {
  if (row === null) return null;
  const own = places.map(({ rowA, rowB }) => (side === 'a' ? rowA : rowB));
  const exact = own.indexOf(row);
  // Steps of height can pass over a row; the one beside it then stands for it.
  const beside = exact < 0 ? own.findIndex((at) => at !== null && Math.abs(at - row) === 1) : exact;
  return places[beside]?.place ?? null;
}
