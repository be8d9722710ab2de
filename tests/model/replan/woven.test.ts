import { expect, test } from 'vitest';
import { tapeOver, wovenGirths } from '../../../src/model/replan/woven.ts';
import { basket, planned } from './demo.ts';

const none = new Float64Array(planned.length);

test('rows that nobody measured are taken to be as planned', () => {
  expect([...wovenGirths(planned, {}, none, 12)]).toEqual([...planned.slice(0, 13)]);
});

test('a measured row has the girth that was measured', () => {
  const woven = wovenGirths(planned, { 5: 640, 12: 700 }, none, 14);
  expect(woven[5]).toBeCloseTo(640, 9);
  expect(woven[12]).toBeCloseTo(700, 9);
  expect(woven).toHaveLength(15);
});

test('rows after the last measured one are off by the same share', () => {
  const woven = wovenGirths(planned, { 10: 0.97 * (planned[10] ?? 0) }, none, 14);
  expect(woven[14]).toBeCloseTo(0.97 * (planned[14] ?? 0), 9);
  expect(woven[0]).toBe(planned[0]);
});

test('the tape that the settled plan would read is no departure', () => {
  const measured = Object.fromEntries(basket.rows.map(({ row, tapeGirth }) => [row, tapeGirth]));
  const woven = wovenGirths(planned, measured, tapeOver(basket.rows), 20);
  const worst = woven.reduce(
    (most, girth, row) => Math.max(most, Math.abs(girth / (planned[row] ?? 1) - 1)),
    0,
  );
  expect(worst).toBeLessThan(1e-4);
});
