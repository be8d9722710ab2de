import { expect, test } from 'vitest';
import { refusals } from '../../../src/keep/shelf/refusals.ts';

test('a keeper that saves again does not hide that another one cannot', () => {
  const { hear } = refusals();
  expect(hear('first', null)).toBeNull();
  expect(hear('first', 'full')).toBe('full');
  expect(hear('second', null)).toBe('full');
  expect(hear('second', 'refused')).toBe('refused');
  expect(hear('second', null)).toBe('full');
  expect(hear('first', null)).toBeNull();
});
