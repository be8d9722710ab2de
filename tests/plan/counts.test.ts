import fc from 'fast-check';
import { expect, test } from 'vitest';
import { bandOfRow, nextBandSoon, rowCount, rowPitch } from '../../src/plan/counts.ts';
import type { Band } from '../../src/plan/schema.ts';
import { anyPlan, tradePlan } from './plans.ts';

const weaver = { section: 'round', width: 1.75, thickness: 1.75 } as const;
const twined: Band = { rows: 2, weave: 'twined', weaver, packing: 1.05, colour: 'natural' };

test('rows of all bands are counted', () => {
  expect(rowCount(tradePlan())).toBe(32);
  expect(rowCount({ bands: [twined, { ...twined, rows: 7 }] })).toBe(9);
});

test('32 rows of 11/64 in flat oval, packed tight, are 5 1/2 in of wall', () => {
  const [band] = tradePlan().bands;
  const bands = [{ ...(band as Band), packing: 1 }];
  let wall = 0;
  for (let row = 1; row <= rowCount({ bands }); row++) wall += rowPitch({ bands }, row);
  expect(wall / 25.4).toBeCloseTo(5.5, 10);
});

test('a twined row of #2 round takes up 3.5 to 4 mm', () => {
  expect(rowPitch({ bands: [twined] }, 1)).toBeGreaterThanOrEqual(3.5);
  expect(rowPitch({ bands: [twined] }, 1)).toBeLessThanOrEqual(4);
});

test('the first row of a band belongs to it, and so does its last', () => {
  const upper = { ...twined, rows: 3, colour: 'walnut' };
  const plan = { bands: [twined, upper] };
  expect([1, 2, 3, 5].map((row) => bandOfRow(plan, row))).toEqual([twined, twined, upper, upper]);
});

test('the next band is found where it begins within two rows', () => {
  const plan = {
    bands: [
      { ...twined, rows: 4 },
      { ...twined, rows: 3 },
    ],
  };
  expect([1, 2, 3, 4, 5, 6, 7].map((row) => nextBandSoon(plan, row))).toEqual([
    ...[undefined, undefined, 5, 5, undefined, undefined, undefined],
  ]);
});

test('a row that there is not is named', () => {
  expect(() => bandOfRow({ bands: [twined] }, 3)).toThrow('row is 3, allowed 1 to 2');
  expect(() => bandOfRow({ bands: [twined] }, 0)).toThrow('row is 0, allowed 1 to 2');
});

test('every row of a plan has a pitch above zero', () => {
  fc.assert(
    fc.property(anyPlan, (plan) => {
      for (let row = 1; row <= rowCount(plan); row++)
        expect(rowPitch(plan, row)).toBeGreaterThan(0);
    }),
  );
});
