import { expect, test } from 'vitest';
import { differenceText, measureText } from '../../src/plan/measureText.ts';

test('a figure is written with its unit', () => {
  expect(measureText('length', 88.9, 'in')).toBe('3 1/2 in');
  expect(measureText('strand', 10_000, 'in')).toBe('32.8 ft');
  expect(measureText('strand', 10_000, 'cm')).toBe('10.0 m');
  expect(measureText('capacity', 2.5e6, 'mm')).toBe('2.5 l');
  expect(measureText('angle', -12.34, 'in')).toBe('−12.3°');
  expect(measureText('count', 4, 'in')).toBe('4');
});

test('a difference has its sign, and none at all where nothing is left of it', () => {
  expect(differenceText('length', 25.4, 'in')).toBe('+1 in');
  expect(differenceText('length', -25.4, 'in')).toBe('−1 in');
  expect(differenceText('length', 0.1, 'in')).toBe('0 in');
  expect(differenceText('gap', -0.2, 'cm')).toBe('−0.02 cm');
  expect(differenceText('gap', 0.001, 'in')).toBe('0.000 in');
  expect(differenceText('capacity', 2.5e6, 'mm')).toBe('+2.50 l');
  expect(differenceText('count', -2, 'in')).toBe('−2');
  expect(differenceText('angle', 0.01, 'in')).toBe('0.0°');
});

test('what is no number is a dash', () => {
  expect(measureText('length', Number.NaN, 'in')).toBe('–');
  expect(differenceText('capacity', Number.NaN, 'cm')).toBe('–');
});
