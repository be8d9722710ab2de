import { expect, test } from 'vitest';
import { edgeStrained } from '../../../src/model/finding/edgeStrained.ts';
import { readingOf, squarePlan } from '../readings.ts';

const reading = readingOf(squarePlan());

const strainedBy = (strain: (row: number) => number) => ({
  ...reading,
  rows: reading.rows.map((row) => ({ ...row, edgeStrain: strain(row.row) })),
});

test('an edge longer by up to 1 % is passed over', () => {
  expect(edgeStrained(strainedBy(() => 0.0099))).toEqual([]);
});

test('beyond 1 % it is worth knowing, once for the whole basket', () => {
  const found = edgeStrained(strainedBy((row) => (row === 4 || row === 9 ? 0.01 + row / 1e4 : 0)));
  expect(found).toMatchObject([
    { kind: 'edge-strained', severity: 'note', row: 9, rows: [9], limit: 0.01 },
  ]);
});

test('beyond 2 % every stretch of rows is warned of', () => {
  const found = edgeStrained(strainedBy((row) => (row < 4 || row > 18 ? 0.021 : 0.012)));
  expect(found.map(({ severity, rows }) => [severity, rows])).toEqual([
    ['warn', [1, 2, 3]],
    ['warn', [19, 20]],
  ]);
});

test('a round weaver has no edge to be strained', () => {
  const weaver = { section: 'round', width: 5, thickness: 5 } as const;
  const round = squarePlan({ bands: [{ rows: 20, weave: 'rounds', weaver, packing: 1 }] });
  expect(edgeStrained({ ...strainedBy(() => 0.03), plan: round })).toEqual([]);
});
