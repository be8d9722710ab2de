/** (`!`: typed arrays in a hot loop.) */
import { findingWords } from '#words/findings.ts';
import type { Net } from '../net/net.ts';
import type { Find } from './family.ts';
import { named, stretches } from './family.ts';

/**
 * Rows that are pressed together harder than they stand as rings. A ring of bending stiffness B and
 * radius R goes oval under the inward load q = 3·B/R³ a length (Lévy 1884; Timoshenko & Gere, Theory
 * of Elastic Stability), that is under the hoop force q·R = 3·B/R². Force and stiffness are both over
 * Young's modulus here.
 *
 * The stakes tie neighbouring rows together: where the girth line turns, one row pulls and the next
 * is pressed, and neither can go oval alone. What counts is the sum over the height that an oval
 * spreads, `ovalReach` up and down and fading to it, each row by the square of how far the base lets
 * it move.
 */
export const rowPressed: Find = ({ net, settling: { rowTension } }) => {
  const reach = ovalReach(net);
  const height = heights(net);
  const share = height.map((z) => (1 - Math.exp(-z / reach) * Math.cos(z / reach)) ** 2);
  const bears = net.rows.map(({ girth, stiffness }) => {
    const radius = girth / (2 * Math.PI);
    return (3 * stiffness) / radius ** 2;
  });
  const found = net.rows.slice(1).map((_, index) => {
    let pressed = 0;
    let borne = 0;
    for (let row = 1; row < net.rows.length; row++) {
      const off = Math.abs(height[row]! - height[index + 1]!) / reach;
      const part = share[row]! * Math.max(0, 1 - off);
      pressed -= part * rowTension[row]!;
      borne += part * bears[row]!;
    }
    return { row: index + 1, value: pressed / borne };
  });
  return stretches(found.filter(({ value }) => value > 1)).map(({ rows, worst }) => ({
    kind: 'row-pressed',
    severity: 'warn',
    row: worst.row,
    rows,
    value: worst.value,
    limit: 1,
    text: findingWords.rowPressed(named(rows), worst.row, worst.value.toFixed(1)),
  }));
};

/** Height of each row's middle over the base's edge, along a stake. */
function heights({ rows }: Net): number[] {
  let wall = 0;
  return rows.map(({ pitch }) => {
    wall += pitch;
    return wall - pitch / 2;
  });
}

/**
 * Height over which an oval dies away along the stakes, mm: 1/b of a beam on an elastic foundation
 * (Hetényi 1946), b⁴ = (n² − 1)²·B_w·c / (4·p·R⁴·B_s·(1 + 1/n²)) with n = 2, c the stake spacing.
 */
function ovalReach({ rows, ends, stakes }: Net): number {
  const { girth, pitch, stiffness } = rows[rows.length >> 1]!;
  const stake = stakes[0]!;
  const bending = stake.stiffness[stake.nodes.length >> 1]!;
  const radius = girth / (2 * Math.PI);
  const spacing = girth / ends.length;
  return ((5 * pitch * radius ** 4 * bending) / (9 * stiffness * spacing)) ** 0.25;
}
