import { expect, test } from 'vitest';
import { differences } from '../../../src/model/compare/differences.ts';
import { heightSteps, profile, readAt } from '../../../src/model/compare/heights.ts';
import { basketOf, jar, trug } from './baskets.ts';

const rows = [
  { row: 1, heightSide: 5, tapeGirth: 600 },
  { row: 2, heightSide: 9, tapeGirth: 640 },
  { row: 3, heightSide: 8, tapeGirth: 700 },
  { row: 4, heightSide: 13, tapeGirth: 620 },
];

test('a row that lies below one before it is left out', () => {
  expect(profile(rows).map(({ row }) => row)).toEqual([1, 2, 4]);
});

test('between two rows the girth goes straight from one to the other', () => {
  const line = profile(rows);
  expect(readAt(line, 5)).toMatchObject({ row: 1, tapeGirth: 600 });
  expect(readAt(line, 6)).toEqual({ row: 1, tapeGirth: 610 });
  expect(readAt(line, 12)).toEqual({ row: 4, tapeGirth: 625 });
});

test('below the first row and above the rim there is no girth', () => {
  expect(readAt(profile(rows), 4.9)).toBeNull();
  expect(readAt(profile(rows), 13.1)).toBeNull();
  expect(readAt([], 5)).toBeNull();
});

test('heights go in steps that are round in the unit and no more than forty', () => {
  expect(heightSteps([profile(rows)], 'cm')).toEqual([5, 10]);
  const [a, b] = [profile(basketOf(trug).rows), profile(basketOf(jar).rows)];
  for (const [unit, one] of [
    ['in', 6.35],
    ['mm', 5],
  ] as const) {
    const heights = heightSteps([a, b], unit);
    expect(heights.length).toBeGreaterThan(10);
    expect(heights.length).toBeLessThanOrEqual(41);
    for (const height of heights)
      expect(Math.abs(height / one - Math.round(height / one))).toBeLessThan(1e-9);
  }
  expect(heightSteps([[], []], 'in')).toEqual([]);
});

test('baskets of different bases and rows compare at every height that both have', () => {
  const { places, total, most } = differences(basketOf(trug), basketOf(jar), 'height', 'in');
  expect(total.places).toBeGreaterThan(10);
  expect(most).not.toBeNull();
  for (const { a, b, difference } of places) {
    if (Number.isFinite(a) && Number.isFinite(b)) expect(difference).toBe(b - a);
    else expect(difference).toBeNaN();
  }
});
