import { expect, test } from 'vitest';
import { stakeGaps } from '../../../src/model/finding/stakeGaps.ts';
import { readingOf, squarePlan } from '../readings.ts';

const reading = readingOf(squarePlan());

/** The reading with these gaps in rows 4 and 5, and 5 mm in all others; stakes are 10 mm wide. */
const withGaps = (gapLeast: number, gapMost: number) => ({
  ...reading,
  rows: reading.rows.map((row) =>
    row.row === 4 || row.row === 5
      ? { ...row, gapLeast, gapMost }
      : { ...row, gapLeast: 5, gapMost: 5 },
  ),
});

test('stakes that lie over one another by more than a tenth are warned of', () => {
  expect(stakeGaps(withGaps(-1.5, 5))).toMatchObject([
    { kind: 'stakes-overlap', severity: 'warn', rows: [4, 5], value: -1.5, limit: -1 },
  ]);
});

test('stakes that touch, or could be shaved to, are passed over', () => {
  expect(stakeGaps(withGaps(-0.9, 5))).toEqual([]);
});

test('a gap of more than two stakes is too wide', () => {
  expect(stakeGaps(withGaps(5, 21))).toMatchObject([
    { kind: 'stakes-far-apart', severity: 'warn', rows: [4, 5], value: 21, limit: 20 },
  ]);
});

test('a gap of two stakes is passed over', () => {
  expect(stakeGaps(withGaps(5, 20))).toEqual([]);
});
