/** The stretches of the girth line between its points, and how fast each lets out or pulls in. */
import { girthLineWords } from '#words/girthLine.ts';
import type { GirthPoint, Unit } from '../plan/schema.ts';
import { formatLength } from '../plan/units.ts';

const words = girthLineWords.stretch;

export interface Stretch {
  /** Rows it runs between; the first stretch starts at the base, row 0. */
  readonly from: number;
  readonly to: number;
  /** Change of girth over the whole stretch, mm; positive lets out. */
  readonly change: number;
}

/** The least change a tape in each unit shows, mm. */
const leastChange: Readonly<Record<Unit, number>> = { in: 25.4 / 16, cm: 1, mm: 1 };

/** Stretches from the base up; one more to the last row where the line runs on beyond its points. */
export function stretches(
  baseGirth: number,
  points: readonly GirthPoint[],
  rows: number,
): readonly Stretch[] {
  const found: Stretch[] = [];
  let from = 0;
  let girth = baseGirth;
  for (const point of points) {
    found.push({ from, to: point.row, change: point.girth - girth });
    from = point.row;
    girth = point.girth;
  }
  if (from < rows) found.push({ from, to: rows, change: 0 });
  return found;
}

/**
 * What a weaver does on a stretch: `lets out` `1/8 in a row`, `pulls in` `1/16 in every 3 rows`,
 * or `straight` and nothing more.
 */
export function stretchNote(
  { from, to, change }: Stretch,
  unit: Unit,
): { readonly act: string; readonly amount: string } {
  const least = leastChange[unit];
  const rows = to - from;
  if (rows < 1 || Math.abs(change) < least / 2) return { act: words.straight, amount: '' };
  const act = change > 0 ? words.letsOut : words.pullsIn;
  const perRow = Math.abs(change) / rows;
  if (perRow >= least * 0.75) return { act, amount: words.eachRow(formatLength(perRow, unit)) };
  const every = Math.max(2, Math.round(least / perRow));
  return { act, amount: words.everyRows(formatLength(least, unit), every) };
}

/** The note as one phrase, for a sentence or a screen reader. */
export function stretchPhrase(stretch: Stretch, unit: Unit): string {
  const { act, amount } = stretchNote(stretch, unit);
  return amount ? words.phrase(act, amount) : act;
}
