import { findingWords } from '#words/findings.ts';
import type { Find } from './family.ts';
import { mm } from './family.ts';

/**
 * Bend radius over thickness that a soaked strand takes: below the first it is near its limit, below
 * the second it is likely to crack. Defaults from memory of the trade, not a rule: soaked core reed
 * bends to about 5–10 times its thickness, sharper only when creased or pinched.
 */
const near = 10;
const past = 5;

/** Stakes bent more sharply than they take. A crease is not a bend and is left out. */
export const tightBend: Find = ({ plan, stakes }) => {
  const { thickness } = plan.base.stake;
  const sharp = stakes.filter(({ tightestBend }) => tightestBend < near * thickness);
  if (sharp.length === 0) return [];
  const value = Math.min(...sharp.map(({ tightestBend }) => tightestBend));
  const cracks = value < past * thickness;
  const times = cracks ? past : near;
  const limit = times * thickness;
  return [
    {
      kind: 'tight-bend',
      severity: cracks ? 'warn' : 'note',
      row: null,
      rows: [],
      value,
      limit,
      text: findingWords.tightBend({
        ends: sharp.length,
        radius: mm(value),
        cracks,
        times,
        limit: mm(limit),
      }),
    },
  ];
};
