import fc from 'fast-check';
import { expect, test } from 'vitest';
import { addPoint, clearRow, movePoint, removePoint, setRowByHand } from '../../src/plan/edit.ts';
import { checkPlan } from '../../src/plan/read.ts';
import { changeBands, changeBase } from '../../src/plan/rescale.ts';
import type { Plan } from '../../src/plan/schema.ts';
import { anyPlan, tradePlan } from './plans.ts';

const points = [
  { row: 8, girth: 530 },
  { row: 18, girth: 600 },
  { row: 32, girth: 510 },
];
const plan = tradePlan({ girthLine: { points, rows: { 17: 592, 30: 520 } } });
const rowsOf = ({ girthLine }: Plan) => girthLine.points.map(({ row }) => row);

test('a moved point has its new row and girth', () => {
  const moved = movePoint(plan, 1, { row: 20, girth: 610 });
  expect(moved.girthLine.points[1]).toEqual({ row: 20, girth: 610 });
  expect(plan.girthLine.points[1]).toEqual({ row: 18, girth: 600 });
});

test('a point stops one row short of its neighbours', () => {
  expect(rowsOf(movePoint(plan, 1, { row: 50, girth: 600 }))).toEqual([8, 31, 32]);
  expect(rowsOf(movePoint(plan, 1, { row: 2, girth: 600 }))).toEqual([8, 9, 32]);
});

test('a point stops at the first and the last row', () => {
  expect(rowsOf(movePoint(plan, 0, { row: -4, girth: 600 }))).toEqual([1, 18, 32]);
  expect(rowsOf(movePoint(plan, 2, { row: 99, girth: 600 }))).toEqual([8, 18, 32]);
});

test('a point between rows goes to the nearer one', () => {
  expect(rowsOf(movePoint(plan, 1, { row: 19.6, girth: 600 }))).toEqual([8, 20, 32]);
});

test('an added point finds its place', () => {
  expect(rowsOf(addPoint(plan, { row: 12, girth: 560 }))).toEqual([8, 12, 18, 32]);
});

test('a point added on a row that has one moves that one', () => {
  const added = addPoint(plan, { row: 18, girth: 580 });
  expect(added.girthLine.points).toEqual([points[0], { row: 18, girth: 580 }, points[2]]);
});

test('a point can be removed, but not the last', () => {
  const one = removePoint(removePoint(plan, 0), 0);
  expect(rowsOf(one)).toEqual([32]);
  expect(removePoint(one, 0)).toBe(one);
});

test('a row set by hand is given back when it is cleared', () => {
  const set = setRowByHand(plan, 9, 540);
  expect(set.girthLine.rows).toEqual({ 9: 540, 17: 592, 30: 520 });
  expect(clearRow(set, 9).girthLine.rows).toEqual({ 17: 592, 30: 520 });
});

test('a row that there is not cannot be set by hand', () => {
  for (const row of [0, -1, 33, 1.5, Number.NaN]) expect(setRowByHand(plan, row, 500)).toBe(plan);
});

test('a girth is brought inside what is allowed', () => {
  expect(setRowByHand(plan, 9, -5).girthLine.rows[9]).toBe(20);
  expect(addPoint(plan, { row: 9, girth: 1e9 }).girthLine.points[1]?.girth).toBe(10_000);
});

test('a girth that is no number changes nothing', () => {
  expect(setRowByHand(plan, 9, Number.NaN)).toBe(plan);
  expect(addPoint(plan, { row: 9, girth: Number.NaN })).toBe(plan);
  expect(movePoint(plan, 1, { row: Number.NaN, girth: Number.NaN })).toEqual(plan);
});

test('no run of edits with any numbers makes a plan that is not allowed', () => {
  const number = fc.oneof(fc.double(), fc.integer({ min: -5, max: 120 }), fc.integer());
  const edit = fc.oneof(
    fc.tuple(number, number, number).map(([i, row, girth]) => (one: Plan) => {
      return movePoint(one, i, { row, girth });
    }),
    fc.tuple(number, number).map(
      ([row, girth]) =>
        (one: Plan) =>
          addPoint(one, { row, girth }),
    ),
    number.map((i) => (one: Plan) => removePoint(one, i)),
    fc.tuple(number, number).map(
      ([row, girth]) =>
        (one: Plan) =>
          setRowByHand(one, row, girth),
    ),
    number.map((row) => (one: Plan) => clearRow(one, row)),
    anyPlan.map(
      ({ bands }) =>
        (one: Plan) =>
          changeBands(one, bands),
    ),
    anyPlan.map(
      ({ bands }) =>
        (one: Plan) =>
          changeBands(one, bands, { hold: true }),
    ),
    anyPlan.map(
      ({ base }) =>
        (one: Plan) =>
          changeBase(one, base),
    ),
  );
  fc.assert(
    fc.property(anyPlan, fc.array(edit, { maxLength: 12 }), (start, edits) => {
      let edited = start;
      for (const one of edits) edited = one(edited);
      expect(checkPlan(edited, 'edited')).toEqual({ ok: true, plan: edited });
    }),
    { numRuns: 500 },
  );
});
