import { expect, test } from 'vitest';
import { ruffles } from '../../../src/model/finding/ruffles.ts';
import { readingOf, squarePlan } from '../readings.ts';

/** Rows are 5 mm, so a wall that lies flat gains 2π·5 = 31.4 mm a row (reference 1.1). */
const jump = (by: number) => {
  const rows = { '10': 400 + by };
  return readingOf(squarePlan({ girthLine: { points: [{ row: 20, girth: 400 }], rows } }));
};

test('a row that opens by less than 2π times the pitch is passed over', () => {
  expect(ruffles(jump(31))).toEqual([]);
});

test('a row that opens by more ruffles, and one that closes by more folds', () => {
  const found = ruffles(jump(32));
  expect(found.map(({ kind, severity, row }) => [kind, severity, row])).toEqual([
    ['ruffles', 'stop', 10],
    ['folds', 'stop', 11],
  ]);
  expect(found[0]?.limit).toBeCloseTo(10 * Math.PI, 9);
  expect(found[0]?.value).toBeCloseTo(32, 9);
});

test('the first row has half a pitch to the edge of the base, and half the room', () => {
  const first = (girth: number) =>
    ruffles(
      readingOf(squarePlan({ girthLine: { points: [{ row: 20, girth }], rows: { '1': girth } } })),
    );
  expect(first(415)).toEqual([]);
  expect(first(417)).toMatchObject([{ kind: 'ruffles', row: 1 }]);
});

test('the step is told as what lies between both girths as the chart shows them', () => {
  const [out, back] = ruffles(jump(32.4));
  expect(out?.text).toContain('lets row 10 out by {mm:400-432.4}');
  expect(back?.text).toContain('pulls row 11 in by {mm:432.4-400}');
});
