import fc from 'fast-check';
import { expect, test } from 'vitest';
import { baseGirth } from '../../src/plan/baseSize.ts';
import { changeBands, changeBase } from '../../src/plan/rescale.ts';
import type { Band, Base, Plan } from '../../src/plan/schema.ts';
import { anyPlan, matOf, tradePlan } from './plans.ts';

const points = [
  { row: 8, girth: 530 },
  { row: 18, girth: 600 },
  { row: 32, girth: 510 },
];
const plan = tradePlan({
  girthLine: { points, rows: { 17: 592, 30: 520 } },
  measured: { 3: 512, 31: 515 },
});
const rowsOf = ({ girthLine }: Plan) => girthLine.points.map(({ row }) => row);
const bandsOf = (rows: number): readonly Band[] => [{ ...(plan.bands[0] as Band), rows }];
const wider: Base = { ...matOf(plan), lengthwise: 8, crosswise: 12 };

test('on a wider base the girths grow as the base girth does', () => {
  const factor = baseGirth(wider) / baseGirth(plan.base);
  const { girthLine } = changeBase(plan, wider);
  expect(girthLine.points.map(({ girth }) => girth)).toEqual(
    [530, 600, 510].map((g) => g * factor),
  );
  expect(girthLine.rows[17]).toBeCloseTo(592 * factor, 10);
});

test('on a wider base the girths stay when they are held', () => {
  expect(changeBase(plan, wider, { hold: true }).girthLine).toEqual(plan.girthLine);
});

test('the centre lift gives way to a small base', () => {
  const small: Base = { ...matOf(plan), lengthwise: 2, crosswise: 2, gap: 0, centreLift: 30 };
  expect(matOf(changeBase(plan, small)).centreLift).toBeCloseTo(12.7, 10);
});

test('with twice the rows the points stand twice as high', () => {
  expect(rowsOf(changeBands(plan, bandsOf(64)))).toEqual([16, 36, 64]);
});

test('with half the rows the points stand half as high, and later rows set by hand are gone', () => {
  const { girthLine, measured } = changeBands(plan, bandsOf(16));
  expect(girthLine.points.map(({ row }) => row)).toEqual([4, 9, 16]);
  expect(girthLine.rows).toEqual({});
  expect(measured).toEqual({ 3: 512 });
});

test('held points keep their rows where there are such rows', () => {
  expect(rowsOf(changeBands(plan, bandsOf(40), { hold: true }))).toEqual([8, 18, 32]);
  expect(rowsOf(changeBands(plan, bandsOf(20), { hold: true }))).toEqual([8, 18, 20]);
});

test('points pressed together keep a row each', () => {
  expect(rowsOf(changeBands(plan, bandsOf(3)))).toEqual([1, 2, 3]);
});

test('with fewer rows than points the first and last points stay', () => {
  const { girthLine } = changeBands(plan, bandsOf(2));
  expect(girthLine.points).toEqual([
    { row: 1, girth: 530 },
    { row: 2, girth: 510 },
  ]);
  expect(rowsOf(changeBands(plan, bandsOf(1)))).toEqual([1]);
});

test('the same base and bands change nothing', () => {
  fc.assert(
    fc.property(anyPlan, (one) => {
      expect(changeBase(one, one.base)).toEqual(one);
      expect(changeBands(one, one.bands)).toEqual(one);
    }),
  );
});

test('a base that is changed and changed back leaves every girth as it was', () => {
  const gap = fc.integer({ min: 0, max: 25 * 16 }).map((n) => n / 16);
  fc.assert(
    fc.property(fc.array(gap, { minLength: 1 }), fc.integer({ min: 2, max: 20 }), (gaps, n) => {
      let there = plan;
      for (const wide of gaps) {
        there = changeBase(there, { ...matOf(plan), gap: wide, lengthwise: n, centreLift: 0 });
      }
      expect(changeBase(there, plan.base).girthLine).toEqual(plan.girthLine);
    }),
  );
});

test('rows that are taken away one by one and put back leave every point and girth as it was', () => {
  let now = plan;
  for (let rows = 31; rows >= 5; rows -= 1) now = changeBands(now, bandsOf(rows));
  expect(rowsOf(now)).toEqual([1, 3, 5]);
  for (let rows = 6; rows <= 32; rows += 1) now = changeBands(now, bandsOf(rows));
  expect(now.girthLine).toEqual(plan.girthLine);
});

test('a girth line that was drawn anew in between is the one that is kept', () => {
  const there = changeBase(plan, wider);
  const moved = { ...there, girthLine: { ...there.girthLine, rows: { 5: 555 } } };
  const back = changeBase(moved, plan.base);
  expect(Object.keys(back.girthLine.rows)).toEqual(['5']);
  expect(back.girthLine.points.map(({ girth }) => Math.round(girth * 1e6) / 1e6)).toEqual([
    530, 600, 510,
  ]);
});
