import { expect, test } from 'vitest';
import { newRecord } from '../../../src/keep/benchRecord.ts';
import { demos } from '../../../src/plan/demo/demos.ts';
import type { BenchWork } from '../../../src/views/bench/benchWork.ts';
import { firstApart, isRowApart } from '../../../src/views/bench/benchWork.ts';
import { isOffPlan, offPlanText } from '../../../src/views/bench/offPlan.ts';

const inch = 25.4;
const rows = 30;
const level = () => new Float64Array(rows + 1).fill(20 * inch);

/** Woven to row 12, with the rows of `off` that much wider than the plan, mm, and the tape read at `measured`. */
function woven(off: Readonly<Record<number, number>>, measured: readonly number[] = []): BenchWork {
  const girths = level().map((girth, row) => girth + (off[row] ?? 0));
  const taped = Object.fromEntries(measured.map((row) => [row, girths[row] ?? 0]));
  const read = {
    plan: demos[0].plan,
    record: newRecord('1', 'Basket 1', taped),
    rows,
    course: { planned: level(), course: level(), isTaken: false, replan: { from: 12, girths } },
    over: level().fill(0),
    plannedOver: level().fill(0),
  };
  // all that the sentence is made of
  return read as unknown as BenchWork;
}

test('a row is said to be as planned where it was measured so, else it is taken to be', () => {
  expect(offPlanText(woven({}, [12]))).toBe('Row 12 is as planned.');
  expect(offPlanText(woven({}))).toBe('Row 12, not measured, is taken to be as planned.');
  expect(isOffPlan(woven({}))).toBe(false);
});

test('a row off its plan is said so with the figure, and whether somebody measured it', () => {
  expect(offPlanText(woven({ 12: inch / 8 }, [12]))).toBe('Row 12 is 1/8 in wider than planned.');
  expect(offPlanText(woven({ 12: -inch / 8 }, [10]))).toBe(
    'Row 12, not measured, is taken to be 1/8 in tighter than planned.',
  );
  expect(isOffPlan(woven({ 12: inch / 8 }))).toBe(true);
});

test('the replan is apart from the plan at the first row whose figure is another', () => {
  expect(firstApart(woven({ 12: 9 }))).toBeNull();
  expect(firstApart(woven({ 12: 9, 15: 5, 16: 7 }))).toBe(15);
  // less than the figures show is nothing that one could take
  expect(firstApart(woven({ 15: 0.79 }))).toBeNull();
  const near = woven({ 12: 9, 13: 5 });
  expect([12, 13, 14].map((row) => isRowApart(near, row))).toEqual([false, true, false]);
});
