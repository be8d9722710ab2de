import { expect, test } from 'vitest';
import { tapeRing } from '../../src/mesh/tapeRing.ts';
import { settleBasket } from '../../src/model/settleBasket.ts';
import { demos } from '../../src/plan/demo/demos.ts';

test.each(demos)(
  'the tape drawn round any row of the $title is as long as the girth read off it, to 1.5 %',
  ({ plan }) => {
    const basket = settleBasket(plan);
    const off = basket.rows.map(({ row, tapeGirth }) =>
      Math.abs(length(tapeRing(basket, row)) / tapeGirth - 1),
    );
    expect(off.length).toBeGreaterThan(5);
    expect(Math.max(...off)).toBeLessThan(0.015);
  },
);

/** Length of a closed line, x, y, z, …, mm. */
function length(ring: Float64Array): number {
  const count = ring.length / 3;
  let sum = 0;
  for (let at = 0; at < count; at += 1) {
    const next = (at + 1) % count;
    const step = [0, 1, 2].map((d) => (ring[3 * next + d] ?? 0) - (ring[3 * at + d] ?? 0));
    sum += Math.hypot(...step);
  }
  return sum;
}
