import { findingWords } from '#words/findings.ts';
import type { Finding } from '../basket.ts';
import type { Find } from './family.ts';
import { mm, mmBetween, named, stretches } from './family.ts';

/**
 * Rows that open, or close, by more than a wall can follow. A wall that lies flat gains 2π times the
 * step from row to row (a ring's next ring); what goes beyond that cannot lie in a round wall at all.
 */
export const ruffles: Find = ({ net: { rows } }) => {
  const found = rows.slice(1).map(({ girth, pitch }, index) => {
    const below = rows[index] ?? { girth, pitch };
    const limit = Math.PI * (pitch + below.pitch);
    return { row: index + 1, value: girth - below.girth, limit };
  });
  const tooFar = (sign: 1 | -1) => stretches(found.filter((at) => sign * at.value > at.limit));
  const girthAt = (row: number) => rows[row]?.girth ?? 0;
  const stepAt = (row: number) => mmBetween(girthAt(row - 1), girthAt(row));
  const limitAt = (row: number) => found[row - 1]?.limit ?? 0;
  return [
    ...tooFar(1).map(({ rows, worst }): Finding => {
      const limit = limitAt(worst.row);
      return {
        kind: 'ruffles',
        severity: 'stop',
        row: worst.row,
        rows,
        value: worst.value,
        limit,
        text: findingWords.ruffles(named(rows), worst.row, stepAt(worst.row), mm(limit)),
      };
    }),
    ...tooFar(-1).map(({ rows, worst }): Finding => {
      const limit = limitAt(worst.row);
      return {
        kind: 'folds',
        severity: 'stop',
        row: worst.row,
        rows,
        value: worst.value,
        limit: -limit,
        text: findingWords.folds(named(rows), worst.row, stepAt(worst.row), mm(limit)),
      };
    }),
  ];
};
