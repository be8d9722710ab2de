import fc from 'fast-check';
import { expect, test } from 'vitest';
import { replan } from '../../../src/model/replan/replan.ts';
import { belly, last, most, planned, wovenAt } from './demo.ts';

const late = { backBy: last, belly: null, rim: null } as const;

test('a basket that is on its plan stays on it, row for row', () => {
  for (const row of [0, 1, 5, 16, 30, last]) {
    for (const backBy of [row + 1, row + 4, last]) {
      const next = replan(planned, wovenAt(1, row), most, { backBy, belly, rim: null });
      expect([...next.girths]).toEqual([...planned]);
    }
  }
});

test('a basket woven 3 % tight up to row 16 still gets its rim', () => {
  const next = replan(planned, wovenAt(0.97, 16), most, late);
  expect(Math.abs(next.rim.reached - (planned[last] ?? 0))).toBeLessThan(1e-6);
  expect(next.girths[last]).toBe(next.rim.reached);
});

test('and its belly too where it is asked for', () => {
  const next = replan(planned, wovenAt(0.97, 16), most, { ...late, belly });
  expect(next.girths[belly]).toBeCloseTo(planned[belly] ?? 0, 6);
  expect(Math.max(...next.girths)).toBeLessThan((planned[belly] ?? 0) + 1e-3);
});

test('rows as woven stay as woven, and the plan is kept from the row where it is met', () => {
  const woven = wovenAt(1.02, 12);
  const next = replan(planned, woven, most, { ...late, backBy: 20 });
  expect([...next.girths.slice(0, 13)]).toEqual([...woven]);
  expect(next.back).toBe(20);
  expect([...next.girths.slice(20)]).toEqual([...planned.slice(20)]);
});

test('where the plan cannot be met as soon as asked, it is met as soon as can be', () => {
  const next = replan(planned, wovenAt(0.9, 12), most, { ...late, backBy: 13 });
  expect(next.back).toBeGreaterThan(13);
  expect(next.back).toBeLessThan(18);
});

test('a rim out of reach is missed by as little as the limits allow', () => {
  const next = replan(planned, wovenAt(0.8, last - 2), most, late);
  const reach = (most[last] ?? 0) + (most[last - 1] ?? 0);
  expect(next.back).toBeNull();
  expect(next.rim.reached).toBeCloseTo(0.8 * (planned[last - 2] ?? 0) + reach, 2);
});

test('another rim than the planned one is gone for over all the rows that are left', () => {
  const next = replan(planned, wovenAt(1, 10), most, { ...late, backBy: 12, rim: 700 });
  expect(next.back).toBeNull();
  expect(next.girths[last]).toBeCloseTo(700, 6);
});

test('more rows to come back over never bend the line more', () => {
  const bend = (backBy: number) => {
    const { girths } = replan(planned, wovenAt(0.97, 8), most, { ...late, backBy });
    const off = girths.map((girth, row) => girth - (planned[row] ?? 0));
    return off
      .slice(8, -1)
      .reduce((sum, d, i) => sum + ((off[i + 7] ?? 0) - 2 * d + (off[i + 9] ?? 0)) ** 2, 0);
  };
  const bends = [12, 16, 20, 26, last].map(bend);
  expect(bends.toSorted((a, b) => b - a)).toEqual(bends);
});

test('limits are never passed, whatever was woven and whatever is asked', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: last - 1 }),
      fc.array(fc.double({ min: 0.7, max: 1.4, noNaN: true }), { minLength: 2, maxLength: 5 }),
      fc.integer({ min: 1, max: last + 3 }),
      fc.option(fc.integer({ min: 1, max: last })),
      fc.option(fc.double({ min: 300, max: 1500, noNaN: true })),
      (row, shares, after, wide, rim) => {
        const woven = planned
          .slice(0, row + 1)
          .map((girth, k) => (k === 0 ? girth : girth * (shares[k % shares.length] ?? 1)));
        const aims = { backBy: row + after, belly: wide, rim };
        const { girths, from } = replan(planned, woven, most, aims);
        for (let k = from + 1; k <= last; k++) {
          const change = Math.abs((girths[k] ?? 0) - (girths[k - 1] ?? 0));
          expect(change).toBeLessThanOrEqual((most[k] ?? 0) + 1e-6);
        }
      },
    ),
    { numRuns: 400 },
  );
});
