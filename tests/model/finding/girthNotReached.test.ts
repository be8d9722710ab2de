import { expect, test } from 'vitest';
import { girthNotReached } from '../../../src/model/finding/girthNotReached.ts';
import { readingOf, squarePlan } from '../readings.ts';

const reading = readingOf(squarePlan());

/** The reading with each row's girth reached off by a share of it. */
const offBy = (share: (row: number) => number) => ({
  ...reading,
  rows: reading.rows.map((row) => ({ ...row, girthReached: row.girth * (1 + share(row.row)) })),
});

test('girths within 0.1 % of the plan are passed over', () => {
  expect(girthNotReached(offBy(() => 0.0009))).toEqual([]);
});

test('rows that follow one another are one finding, at the row where it is worst', () => {
  const [finding, ...others] = girthNotReached(
    offBy((row) => (row >= 5 && row <= 8 ? -0.001 * (row - 3) : 0)),
  );
  expect(others).toEqual([]);
  expect(finding).toMatchObject({ kind: 'girth-not-reached', severity: 'warn', row: 8 });
  expect(finding?.rows).toEqual([5, 6, 7, 8]);
  expect(finding?.value).toBeCloseTo(-0.005, 9);
});

test('two separate stretches are two findings', () => {
  const found = girthNotReached(offBy((row) => (row === 3 || row === 9 ? 0.002 : 0)));
  expect(found.map(({ rows }) => rows)).toEqual([[3], [9]]);
});

test('a girth off by more than 1 % cannot be woven as planned', () => {
  expect(girthNotReached(offBy((row) => (row === 4 ? 0.02 : 0)))[0]?.severity).toBe('stop');
});

test('the text says by how much, in lengths that the view can put in the plan’s unit', () => {
  const [finding] = girthNotReached(offBy((row) => (row === 4 ? -0.005 : 0)));
  expect(finding?.text).toContain('{mm:2} short of {mm:400}');
});
