/** (`!`: typed arrays in a hot loop.) */
import { findingWords } from '#words/findings.ts';
import type { Finding } from '../basket.ts';
import type { Stake } from '../net/net.ts';
import type { Find } from './family.ts';
import { named, percent, stretches } from './family.ts';

/** A stake's segment may be off its length by this share without a word. */
const allowed = 0.005;

/** Stretches of stake that came out longer or shorter than they are: a compromise. */
export const stakeStretched: Find = ({ net, positions }) => {
  const most = new Float64Array(net.rows.length);
  for (const stake of net.stakes) {
    const { nodes, rest } = stake;
    for (let at = 0; at < rest.length; at++) {
      const a = 3 * nodes[at]!;
      const b = 3 * nodes[at + 1]!;
      const x = positions[b]! - positions[a]!;
      const y = positions[b + 1]! - positions[a + 1]!;
      const z = positions[b + 2]! - positions[a + 2]!;
      const off = Math.sqrt(x * x + y * y + z * z) / rest[at]! - 1;
      const row = rowOf(stake, at);
      if (Math.abs(off) > Math.abs(most[row]!)) most[row] = off;
    }
  }
  const found = Array.from(most, (value, row) => ({ row, value }));
  return stretches(found.filter(({ value }) => Math.abs(value) > allowed)).map(
    ({ rows, worst }): Finding => {
      const inBase = worst.row === 0;
      return {
        kind: 'stake-stretched',
        severity: 'warn',
        row: inBase ? null : worst.row,
        rows: rows.filter((row) => row > 0),
        value: worst.value,
        limit: allowed,
        text: findingWords.stakeStretched(
          where(rows),
          percent(Math.abs(worst.value)),
          worst.value > 0,
          percent(allowed),
        ),
      };
    },
  );
};

/** The rows by name; row 0 is the base. */
function where(rows: readonly number[]): string {
  if (rows[0] !== 0) return named(rows);
  return rows.length === 1 ? findingWords.base : findingWords.baseAndRows(rows.at(-1) ?? 0);
}

/** Row that segment `at` leads up to; 0 in the base. */
function rowOf({ edge: [first, second] }: Stake, at: number): number {
  if (first >= 0 && at < first) return first - at;
  if (second >= 0 && at >= second) return at - second + 1;
  return 0;
}
