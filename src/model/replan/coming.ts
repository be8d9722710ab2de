/** What the rows to come have in store, said before they are woven. */
import { replanWords } from '#words/replan.ts';
import { bandOfRow } from '../../plan/counts.ts';
import type { Basket, Finding } from '../basket.ts';
import { mm, stretches } from '../finding/family.ts';

/** Findings of the basket on the table that speak of rows after `from`, or of all of it. */
export function findingsAhead(basket: Basket, from: number): Finding[] {
  const ahead = basket.findings.filter(
    ({ row, rows }) => row === null || Math.max(row, ...rows) > from,
  );
  return [...narrowGaps(basket, from), ...ahead];
}

/**
 * Rows to come where the gaps between the stakes, on the mean, close below the width of the strand that
 * has to go through them.
 */
function narrowGaps({ plan, net, rows }: Basket, from: number): Finding[] {
  const covered = net.ends.reduce((sum, { width }) => sum + width, 0);
  const found = rows.slice(from).flatMap(({ row, girthReached }) => {
    const gap = (girthReached - covered) / net.ends.length;
    const value = bandOfRow(plan, row).weaver.width - gap;
    return value > 0 ? [{ row, value }] : [];
  });
  return stretches(found).map(({ rows: all, worst }): Finding => {
    const first = all[0] ?? worst.row;
    const limit = bandOfRow(plan, worst.row).weaver.width;
    const value = limit - worst.value;
    return {
      kind: 'gaps-narrow',
      severity: 'warn',
      row: first,
      rows: all,
      value,
      limit,
      text: replanWords.gapsNarrow(first, mm(value), mm(limit)),
    };
  });
}
