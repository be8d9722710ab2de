import { expect, test } from 'vitest';
import { capacityText, litres, usDryMeasure } from '../../src/plan/capacity.ts';
import { measureText } from '../../src/plan/measureText.ts';

/** NIST Handbook 44, Appendix C: 1 dry quart = 1.101 221 L, 1 peck = 8.809 768 L, 1 bushel = 35.239 07 L. */
const quart = 1_101_220.942715;
const peck = 8_809_767.54172;
const bushel = 35_239_070.16688;

test('four dry quarts are told to a decimal, which is 4.4 litres', () => {
  expect(usDryMeasure(4 * quart)).toBe('4.0 dry qt');
  expect(litres(4 * quart)).toBe('4.4 litres');
});

test('a small basket is told to two decimals', () => {
  expect(usDryMeasure(quart / 2)).toBe('0.50 dry qt');
  expect(litres(500_000)).toBe('0.50 litres');
});

test('from eight quarts on it is pecks, and from four pecks on bushels', () => {
  expect(usDryMeasure(7.75 * quart)).toBe('7.8 dry qt');
  expect(usDryMeasure(8 * quart)).toBe('1.00 pk');
  expect(usDryMeasure(2.5 * peck)).toBe('2.5 pk');
  expect(usDryMeasure(4 * peck)).toBe('1.00 bu');
  expect(usDryMeasure(1.25 * bushel)).toBe('1.25 bu');
});

test('summary, sheet and comparison round a capacity alike', () => {
  for (const capacity of [0.41, 1.27, 4.79, 7.33].map((count) => count * quart)) {
    expect(measureText('capacity', capacity, 'in')).toBe(capacityText(capacity, 'in'));
    const [figure] = capacityText(capacity, 'cm').split(' ');
    expect(measureText('capacity', capacity, 'cm')).toBe(`${figure} l`);
  }
});

test('a capacity that is no number is a dash', () => {
  expect(usDryMeasure(Number.NaN)).toBe('–');
  expect(litres(Number.POSITIVE_INFINITY)).toBe('–');
});
