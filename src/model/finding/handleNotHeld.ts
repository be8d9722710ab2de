/** (`!`: typed arrays in a hot loop.) */
import { findingWords } from '#words/findings.ts';
import { rowCount } from '../../plan/counts.ts';
import type { Find } from './family.ts';
import { mm, named, percent, stretches } from './family.ts';

/** As a stake's length, the width that a handle holds may be off by this share without a word. */
const allowed = 0.005;

/** Rows at which the legs of a fixed handle did not come to stand as far apart as they are. */
export const handleNotHeld: Find = ({ plan, net, positions }) => {
  const { nodes, length } = net.heldWidths;
  const rows = rowCount(plan);
  const pairs = length.length / rows;
  const worst = new Float64Array(rows);
  length.forEach((planned, i) => {
    const [a, b] = [3 * nodes[2 * i]!, 3 * nodes[2 * i + 1]!];
    const apart = Math.hypot(
      positions[a]! - positions[b]!,
      positions[a + 1]! - positions[b + 1]!,
      positions[a + 2]! - positions[b + 2]!,
    );
    const row = Math.floor(i / pairs);
    const off = apart - planned;
    if (Math.abs(off) > Math.max(allowed * planned, Math.abs(worst[row]!))) worst[row] = off;
  });
  const found = Array.from(worst, (value, index) => ({ row: index + 1, value }));
  return stretches(found.filter(({ value }) => value !== 0)).map(({ rows: own, worst: most }) => {
    const planned = length[(most.row - 1) * pairs]!;
    return {
      kind: 'handle-not-held',
      severity: 'warn',
      row: most.row,
      rows: own,
      value: most.value / planned,
      limit: allowed,
      text: findingWords.handleNotHeld(
        named(own),
        most.row,
        mm(Math.abs(most.value)),
        most.value > 0,
        percent(allowed),
      ),
    };
  });
};
