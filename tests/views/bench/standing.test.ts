import { expect, test } from 'vitest';
import { standing } from '../../../src/views/bench/standing.ts';

const as = (plan: number, now: number, moved = 0) => standing({ now, plan, moved, unit: 'in' });

test('what a tape does not tell from the plan is as planned', () => {
  expect(as(700, 700)).toBe('as planned');
  expect(as(700, 700.7)).toBe('as planned');
  // more than a tape misses, and yet the same sixteenth
  expect(as(699.6, 700.4)).toBe('as planned');
});

test('what is told is the difference of what is shown', () => {
  expect(as(25.4 * 27, 25.4 * 27.125)).toBe('+1/8 in against the plan');
  expect(as(25.4 * 27, 25.4 * 26.9375)).toBe('−1/16 in against the plan');
});

test('a belly that has moved is told by its rows, with its change of girth where there is one', () => {
  expect(as(700, 700, -1)).toBe('1 row lower than planned');
  expect(as(700, 700, 2)).toBe('2 rows higher than planned');
  expect(as(25.4 * 27, 25.4 * 27.5, 2)).toBe('+1/2 in, 2 rows higher than planned');
});
