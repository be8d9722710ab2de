/** (`!`: typed arrays in a hot loop.) */
import { findingWords } from '#words/findings.ts';
import { smoothLength } from '../net/smoothLength.ts';
import type { Find } from './family.ts';
import { mm, percent } from './family.ts';

/** A row woven flat in the base is packed by hand and may be off by this share. Common practice, no source. */
const allowed = 0.01;

/** A base whose flat rows would have to be longer or shorter than they are: it does not lie as planned. */
export const flatRowsOff: Find = ({ net, positions }) => {
  let value = 0;
  let by = 0;
  for (const { nodes, girth, spacing } of net.flatRows) {
    const points = Float64Array.from(
      { length: 3 * nodes.length },
      (_, i) => positions[3 * nodes[Math.floor(i / 3)]! + (i % 3)]!,
    );
    const off = smoothLength(points, spacing) - girth;
    if (Math.abs(off / girth) <= Math.abs(value)) continue;
    value = off / girth;
    by = off;
  }
  if (Math.abs(value) <= allowed) return [];
  return [
    {
      kind: 'flat-rows-off',
      severity: 'warn',
      row: null,
      rows: [],
      value,
      limit: allowed,
      text: findingWords.flatRowsOff(
        mm(Math.abs(by)),
        by > 0,
        percent(Math.abs(value)),
        percent(allowed),
      ),
    },
  ];
};
