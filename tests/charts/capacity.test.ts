import { expect, test } from 'vitest';
import { litres, usDryQuarts } from '../../src/charts/capacity.ts';

/** 1 US dry quart = 67.200625 in³ = 1.101220942715 L (NIST Handbook 44, Appendix C). */
const quart = 1_101_220.942715;

test('four dry quarts are read as 4, which is 4.4 litres', () => {
  expect(usDryQuarts(4 * quart)).toBe('4');
  expect(litres(4 * quart)).toBe('4.4');
});

test('a small basket is told to two decimals', () => {
  expect(usDryQuarts(quart / 2)).toBe('0.50');
  expect(litres(500_000)).toBe('0.50');
});

test('a capacity that is no number is a dash', () => {
  expect(usDryQuarts(Number.NaN)).toBe('–');
  expect(litres(Number.POSITIVE_INFINITY)).toBe('–');
});
