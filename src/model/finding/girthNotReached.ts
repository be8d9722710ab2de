import { findingWords } from '#words/findings.ts';
import type { Find } from './family.ts';
import { mm, named, percent, stretches } from './family.ts';

/** A girth may be off by this share without a word; from the second on it is not the plan any more. */
const allowed = 0.001;
const astray = 0.01;

/** Rows whose loop did not come to the planned girth: the shape is a compromise there. */
export const girthNotReached: Find = ({ rows }) => {
  const off = rows.map(({ row, girth, girthReached }) => ({
    row,
    value: girthReached / girth - 1,
  }));
  return stretches(off.filter(({ value }) => Math.abs(value) > allowed)).map(({ rows, worst }) => {
    const { girth = 0, girthReached = 0 } = rows.length > 0 ? reading(worst.row) : {};
    return {
      kind: 'girth-not-reached',
      severity: Math.abs(worst.value) > astray ? 'stop' : 'warn',
      row: worst.row,
      rows,
      value: worst.value,
      limit: allowed,
      text: findingWords.girthNotReached({
        where: named(rows),
        row: worst.row,
        isShort: worst.value < 0,
        by: mm(Math.abs(girthReached - girth)),
        girth: mm(girth),
        share: percent(Math.abs(worst.value)),
        allowed: percent(allowed),
      }),
    };
  });

  function reading(row: number) {
    return rows[row - 1] ?? { girth: 0, girthReached: 0 };
  }
};
