/** The girth that each row is to have, from the few points and single rows that the maker gave. */
import { baseGirth } from '../../plan/baseSize.ts';
import { rowCount } from '../../plan/counts.ts';
import type { Plan } from '../../plan/schema.ts';
import { monotoneCubic } from './monotone.ts';

/**
 * Girth by row, mm: index 0 is the base girth, index `k` is row `k`, so the length is rows + 1.
 *
 * A monotone cubic runs from the base girth through the plan's points; after the last point the
 * girth stays as it is. A row set by hand has that girth and leaves its neighbours alone.
 */
export function girthLine(plan: Pick<Plan, 'base' | 'bands' | 'girthLine'>): Float64Array {
  const { points, rows } = plan.girthLine;
  const line = monotoneCubic(
    [0, ...points.map(({ row }) => row)],
    [baseGirth(plan.base), ...points.map(({ girth }) => girth)],
  );
  const girths = new Float64Array(rowCount(plan) + 1);
  for (let row = 0; row < girths.length; row++) {
    girths[row] = (row > 0 ? rows[row] : undefined) ?? line(row);
  }
  return girths;
}

/** Pull-in by row, mm: how much narrower row `k` is than row `k − 1`; 0 for row 0. */
export function pullIns(girths: Float64Array): Float64Array {
  return girths.map((girth, row) => (row === 0 ? 0 : (girths[row - 1] ?? girth) - girth));
}
