import { expect, test } from 'vitest';
import { stretches, stretchPhrase } from '../../src/charts/stretches.ts';

const points = [
  { row: 8, girth: 530 },
  { row: 18, girth: 600 },
];

test('the first stretch starts at the base and the last one runs on to the rim', () => {
  expect(stretches(508, points, 32)).toEqual([
    { from: 0, to: 8, change: 22 },
    { from: 8, to: 18, change: 70 },
    { from: 18, to: 32, change: 0 },
  ]);
});

test('no stretch follows a point on the last row', () => {
  expect(stretches(508, points, 18)).toHaveLength(2);
});

test('a stretch says how much it lets out or pulls in, in the unit of the plan', () => {
  expect(stretchPhrase({ from: 0, to: 8, change: 25.4 }, 'in')).toBe('lets out 1/8 in a row');
  expect(stretchPhrase({ from: 0, to: 10, change: -70 }, 'mm')).toBe('pulls in 7 mm a row');
  expect(stretchPhrase({ from: 0, to: 10, change: -70 }, 'cm')).toBe('pulls in 0.7 cm a row');
});

test('a change too small for the tape in one row is told over several rows', () => {
  expect(stretchPhrase({ from: 0, to: 12, change: 6.35 }, 'in')).toBe(
    'lets out 1/16 in every 3 rows',
  );
  expect(stretchPhrase({ from: 0, to: 20, change: -5 }, 'mm')).toBe('pulls in 1 mm every 4 rows');
});

test('a stretch that keeps its girth is straight', () => {
  expect(stretchPhrase({ from: 18, to: 32, change: 0 }, 'in')).toBe('straight');
});
