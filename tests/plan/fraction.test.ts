import { expect, test } from 'vitest';
import { fractionValue, mixedFraction } from '../../src/plan/fraction.ts';

test.each([
  [0, '0'],
  [0.5, '1/2'],
  [3.5, '3 1/2'],
  [11 / 16, '11/16'],
  [2.25, '2 1/4'],
  [4.375, '4 3/8'],
  [0.99, '1'],
  [1 / 33, '0'],
  [1 / 31, '1/16'],
])('%d is %s to the nearest sixteenth', (value, text) => {
  expect(mixedFraction(value)).toBe(text);
});

test.each([
  ['1/4', 0.25],
  ['3 1/2', 3.5],
  ['3-1/2', 3.5],
  ['3 - 1/2', 3.5],
  ['12  11/64', 12 + 11 / 64],
  ['7 / 8', 0.875],
])('%s is the fraction %d', (text, value) => {
  expect(fractionValue(text)).toBe(value);
});

test.each(['1/0', '1/', '/2', '1/2/3', '1 2 3/4', '1.5/2', '3', ''])(
  '%j is no fraction',
  (text) => {
    expect(fractionValue(text)).toBeUndefined();
  },
);

test('every sixteenth up to 40 in is written reduced and read back exactly', () => {
  for (let sixteenths = 1; sixteenths < 640; sixteenths++) {
    const text = mixedFraction(sixteenths / 16);
    expect(fractionValue(text) ?? Number(text)).toBe(sixteenths / 16);
    expect(text).not.toMatch(/[02468]\/(2|4|8|16)$/);
  }
});
