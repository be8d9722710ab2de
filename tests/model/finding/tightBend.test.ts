import { expect, test } from 'vitest';
import { tightBend } from '../../../src/model/finding/tightBend.ts';
import { readingOf, squarePlan } from '../readings.ts';

const reading = readingOf(squarePlan());

/** The reading with three ends bent to `radius` and the rest to 100 mm; stakes are 1 mm thick. */
const bentTo = (radius: number) => ({
  ...reading,
  stakes: reading.stakes.map((stake) => ({
    ...stake,
    tightestBend: stake.end < 3 ? radius : 100,
  })),
});

test('bends of ten thicknesses and more are passed over', () => {
  expect(tightBend(bentTo(10))).toEqual([]);
});

test('a bend under ten thicknesses is worth knowing', () => {
  const [finding] = tightBend(bentTo(8));
  expect(finding).toMatchObject({ kind: 'tight-bend', severity: 'note', value: 8, limit: 10 });
  expect(finding?.text).toMatch(/^The stakes of 3 ends are/);
});

test('a bend under five thicknesses is warned of', () => {
  expect(tightBend(bentTo(4))).toMatchObject([{ severity: 'warn', value: 4, limit: 5 }]);
});
