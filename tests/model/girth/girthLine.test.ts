import fc from 'fast-check';
import { expect, test } from 'vitest';
import { girthLine, pullIns } from '../../../src/model/girth/girthLine.ts';
import { baseGirth } from '../../../src/plan/baseSize.ts';
import { rowCount } from '../../../src/plan/counts.ts';
import { anyPlan, tradePlan } from '../../plan/plans.ts';

const points = [
  { row: 8, girth: 530 },
  { row: 18, girth: 600 },
  { row: 28, girth: 510 },
];
const plan = tradePlan({ girthLine: { points } });

test('row 0 is the base girth', () => {
  expect(girthLine(plan)[0]).toBeCloseTo(508, 10);
});

test('there is a girth for the base and for every row', () => {
  expect(girthLine(plan)).toHaveLength(33);
});

test('the girth line goes through its points', () => {
  const girths = girthLine(plan);
  expect([8, 18, 28].map((row) => girths[row])).toEqual([530, 600, 510]);
});

test('after the last point the girth stays', () => {
  expect([...girthLine(plan).slice(28)]).toEqual([510, 510, 510, 510, 510]);
});

test('from the base to the first point the girth only rises', () => {
  const rising = [...girthLine(plan).slice(0, 9)];
  expect(rising).toEqual(rising.toSorted((one, other) => one - other));
});

test('a row set by hand has its girth and leaves its neighbours alone', () => {
  const byHand = tradePlan({ girthLine: { points, rows: { 17: 570 } } });
  const expected = girthLine(plan);
  expected[17] = 570;
  expect(girthLine(byHand)).toEqual(expected);
});

test('one point as wide as the base makes a straight wall', () => {
  const straight = tradePlan({ girthLine: { points: [{ row: 20, girth: 508 }] } });
  for (const girth of girthLine(straight)) expect(girth).toBeCloseTo(508, 10);
});

test('pull-in is positive where the wall narrows', () => {
  expect([...pullIns(Float64Array.of(500, 510, 510, 490))]).toEqual([0, -10, 0, 20]);
});

test('pull-ins add up to the difference between base and rim', () => {
  fc.assert(
    fc.property(anyPlan, (one) => {
      const girths = girthLine(one);
      const sum = pullIns(girths).reduce((total, change) => total + change, 0);
      expect(baseGirth(one.base) - sum).toBeCloseTo(girths[rowCount(one)] ?? Number.NaN, 6);
    }),
  );
});
