import { expect, test } from 'vitest';
import { lengthTicks, rowTicks } from '../../src/plan/ticks.ts';
import { formatLength } from '../../src/plan/units.ts';

test('inch ticks lie on whole inches where there is room for no more', () => {
  expect(lengthTicks(508, 660.4, 'in', 6).map((mm) => formatLength(mm, 'in'))).toEqual([
    '20 in',
    '21 in',
    '22 in',
    '23 in',
    '24 in',
    '25 in',
    '26 in',
  ]);
});

test('metric ticks are round in millimetres', () => {
  expect(lengthTicks(512, 590, 'mm', 5)).toEqual([520, 540, 560, 580]);
});

test('row ticks start at the base', () => {
  expect(rowTicks(32, 9)).toEqual([0, 4, 8, 12, 16, 20, 24, 28, 32]);
  expect(rowTicks(300, 9)).toEqual([0, 50, 100, 150, 200, 250, 300]);
});

test('a range of nothing has at most one tick', () => {
  expect(lengthTicks(500, 500, 'mm', 5).length).toBeLessThanOrEqual(1);
});
