import { findingWords } from '#words/findings.ts';
import type { Finding } from '../basket.ts';
import type { Find } from './family.ts';
import { mm, named, stretches } from './family.ts';

/** A stake can be shaved by this share of its width where it is crowded. Common practice, no source. */
const shaved = 0.1;
/**
 * A gap of so many stake widths no longer carries the weaver well. Common practice, no source. Round stakes are
 * thin and stand 1 to 2 in apart in drilled bases (of cane and of willow, trade pages on office baskets and
 * on solid bases): their middle, 1 1/2 in, is let pass.
 */
const wide = 2;
const wideRound = 38.1;

/** Rows where stakes lie over one another, or too far apart. */
export const stakeGaps: Find = ({ plan, rows }) => {
  const { width, section } = plan.base.stake;
  const most = section === 'round' ? Math.max(wideRound, wide * width) : wide * width;
  const crowded = rows.filter(({ gapLeast }) => gapLeast < -shaved * width);
  const sparse = rows.filter(({ gapMost }) => gapMost > most);
  return [
    ...stretches(crowded.map(({ row, gapLeast }) => ({ row, value: gapLeast }))).map(
      ({ rows, worst }): Finding => ({
        kind: 'stakes-overlap',
        severity: 'warn',
        row: worst.row,
        rows,
        value: worst.value,
        limit: -shaved * width,
        text: findingWords.stakesOverlap(named(rows), mm(-worst.value), mm(shaved * width)),
      }),
    ),
    ...stretches(sparse.map(({ row, gapMost }) => ({ row, value: gapMost }))).map(
      ({ rows, worst }): Finding => ({
        kind: 'stakes-far-apart',
        severity: 'warn',
        row: worst.row,
        rows,
        value: worst.value,
        limit: most,
        text: findingWords.stakesFarApart(named(rows), mm(worst.value), mm(most)),
      }),
    ),
  ];
};
