import { expect, test } from 'vitest';
import type { AcrossAt } from '../../../src/model/replan/acrossDoubt.ts';
import { acrossDoubt } from '../../../src/model/replan/acrossDoubt.ts';
import { tapeOver } from '../../../src/model/replan/woven.ts';
import { basket } from './demo.ts';

const at: AcrossAt = { row: 9, which: 'width', expected: 210, girth: 700, other: 240 };

test('a width near to what the row settles to is taken without a word', () => {
  for (const width of [190, 205, 210, 225]) expect(acrossDoubt(width, at)).toBeNull();
});

test('every row of a settled basket can be as long and wide as it is', () => {
  const over = tapeOver(basket.rows);
  expect(over.length).toBeGreaterThan(10);
  for (const { row, length, width, tapeGirth } of basket.rows) {
    const one = { row, which: 'width', expected: width, girth: tapeGirth, other: length } as const;
    expect(acrossDoubt(width, one)).toBeNull();
  }
});

test('nothing is wider than half of the way round it', () => {
  expect(acrossDoubt(360, { ...at, other: undefined })?.text).toMatch(/half of that, {mm:350}/);
});

test('a rectangle and a flat lens are the most and the least that two widths go round', () => {
  const square = { ...at, expected: 200, other: 200 };
  expect(acrossDoubt(200, { ...square, girth: 800 })).toBeNull();
  expect(acrossDoubt(200, { ...square, girth: 820 })?.text).toMatch(/Measure once more/);
  expect(acrossDoubt(200, { ...square, girth: 2 * Math.SQRT2 * 200 })).toBeNull();
  expect(acrossDoubt(200, { ...square, girth: 540 })?.text).toMatch(/{mm:565\.\d+} and {mm:800}/);
});

test('what is no width at all cannot be kept', () => {
  for (const width of [Number.NaN, 0, -3, 4, 6000]) {
    expect(acrossDoubt(width, at)?.isImpossible).toBe(true);
  }
});

test('far from the shape is asked about, and can be kept', () => {
  const doubt = acrossDoubt(160, { ...at, other: undefined });
  expect(doubt?.text).toMatch(/{mm:50} less than the {mm:210}/);
  expect(doubt?.isImpossible).toBe(false);
});
