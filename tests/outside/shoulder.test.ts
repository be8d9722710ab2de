/** What must emerge without being drawn in. Source: `shaping-model.md`, "What must emerge". */
import { describe, expect, test } from 'vitest';
import type { Basket } from '../../src/model/basket.ts';
import { settleBasket } from '../../src/model/settleBasket.ts';
import { place } from '../model/readings.ts';
import { matPlan } from '../model/settle/shapes.ts';

/** 9 + 9 stakes, opened to 1.08 of the base by row 10 and drawn in to 0.86 from row `from` to row `to`. */
function drawnIn(from: number, to: number): Basket {
  return settleBasket(
    matPlan({
      lengthwise: 9,
      crosswise: 9,
      rows: 30,
      base: { upsett: 'rolled', corners: { kind: 'square' } } as never,
      girths: [[10, 1.08], [from, 1.08], ...(to < 30 ? [[to, 0.86] as const] : []), [30, 0.86]],
      set: 0.4,
    }),
  );
}

/** Sharpest bend of any end from row 6 up, 1/mm, from three nodes. */
function sharpest({ net, positions }: Basket): number {
  let most = 0;
  for (const { nodes } of net.ends) {
    for (let row = 7; row + 1 < nodes.length; row++) {
      const [a, b, c] = [row - 1, row, row + 1].map((k) => place(positions, nodes[k] ?? 0));
      if (!a || !b || !c) continue;
      const [d, e] = [a.map((v, i) => (b[i] ?? 0) - v), b.map((v, i) => (c[i] ?? 0) - v)];
      const [l, m] = [Math.hypot(...d), Math.hypot(...e)];
      const cosine = d.reduce((sum, v, i) => sum + (v * (e[i] ?? 0)) / (l * m), 0);
      most = Math.max(most, Math.acos(Math.min(1, cosine)) / ((l + m) / 2));
    }
  }
  return most;
}

describe('the same pull-in begun later', () => {
  const baskets = [12, 16, 20].map((from) => drawnIn(from, 30));

  test('leaves the belly higher up the wall', () => {
    const lows = baskets.map(({ rows }) => {
      // The middle of the rows that are as wide as the widest within 1 %.
      const most = Math.max(...rows.map(({ tapeGirth }) => tapeGirth));
      const wide = rows.filter(({ tapeGirth }) => tapeGirth > 0.99 * most);
      return wide.reduce((sum, { heightSide }) => sum + heightSide / wide.length, 0);
    });
    expect(lows[0]).toBeLessThan(lows[1] ?? 0);
    expect(lows[1]).toBeLessThan(lows[2] ?? 0);
  });

  test('leans the wall further in at the rim', () => {
    const leans = baskets.map(({ rows }) => rows.at(-1)?.lean ?? 0);
    expect(leans[0]).toBeLessThan(0);
    expect(leans[1]).toBeLessThan(leans[0] ?? 0);
    expect(leans[2]).toBeLessThan(leans[1] ?? 0);
  });

  test('lets the basket hold more', () => {
    const holds = baskets.map(({ summary }) => summary.capacity);
    expect(holds[0]).toBeLessThan(holds[1] ?? 0);
    expect(holds[1]).toBeLessThan(holds[2] ?? 0);
  });
});

test('the same pull-in over fewer rows makes a sharper shoulder', () => {
  const bends = [30, 26, 22].map((to) => sharpest(drawnIn(14, to)));
  expect(bends[1]).toBeGreaterThan(1.1 * (bends[0] ?? 0));
  expect(bends[2]).toBeGreaterThan(1.1 * (bends[1] ?? 0));
});

test('a girth line that pulls in evenly leans the wall in and one that opens evenly leans it out', () => {
  const [closing, opening] = [0.8, 1.25].map((share) =>
    settleBasket(matPlan({ rows: 20, girths: [[20, share]] })),
  );
  expect(closing?.rows[15]?.lean).toBeLessThan(-5);
  expect(opening?.rows[15]?.lean).toBeGreaterThan(5);
});
