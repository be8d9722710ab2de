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
        text:
          `${named(rows)}: neighbouring stakes lie over one another by ${mm(-worst.value)} (up to ` +
          `${mm(shaved * width)} can be shaved off). Draw in less, or use narrower or fewer stakes.`,
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
        text:
          `${named(rows)}: stakes stand up to ${mm(worst.value)} apart, where ${mm(most)} is let pass, ` +
          'and carry the weaver badly. Add stakes, or open out less.',
      }),
    ),
  ];
};
