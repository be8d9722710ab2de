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
  expect(differenceText('length', 25.4, 50.8, 'in')).toBe('+1 in');
  expect(differenceText('length', 50.8, 25.4, 'in')).toBe('−1 in');
  expect(differenceText('length', 25.4, 25.5, 'in')).toBe('0 in');
  expect(differenceText('gap', 0.5, 0.3, 'cm')).toBe('−0.02 cm');
  expect(differenceText('gap', 0.5, 0.501, 'in')).toBe('0.000 in');
  expect(differenceText('capacity', 2.5e6, 5e6, 'mm')).toBe('+2.5 l');
  expect(differenceText('count', 4, 2, 'in')).toBe('−2');
  expect(differenceText('angle', 2.01, 2.02, 'in')).toBe('0.0°');
  expect(differenceText('angle', -3, 2, 'in')).toBe('+5.0°');
});

test('a difference is that of the two figures as they are shown', () => {
  // 27 1/8 and 29 1/16 in, whose lengths lie 1 7/8 in and a hair apart
  const [from, to] = [27.15 * 25.4, 29.04 * 25.4];
  expect(measureText('length', from, 'in')).toBe('27 1/8 in');
  expect(measureText('length', to, 'in')).toBe('29 1/16 in');
  expect(differenceText('length', from, to, 'in')).toBe('+1 15/16 in');
  expect(differenceText('strand', 1040, 2060, 'cm')).toBe('+1.1 m');
  expect(differenceText('capacity', 1.946e6, 2.04e6, 'cm')).toBe('+0.05 l');
  expect(differenceText('count', 1.4, 2.6, 'in')).toBe('+2');
});

test('what is no number is a dash', () => {
  expect(measureText('length', Number.NaN, 'in')).toBe('–');
  expect(differenceText('capacity', Number.NaN, 1, 'cm')).toBe('–');
});
