import { expect, test } from 'vitest';
import { newRecord } from '../../../src/keep/benchRecord.ts';
import { sixteenth, typed } from '../../../src/views/bench/measureEntry.ts';
import { measureHad, withMeasure, withoutMeasure } from '../../../src/views/bench/recordMeasure.ts';

const after = (...keys: readonly string[]) => keys.reduce(typed, '');

test('figures stand one behind the other, and an eighth takes the place of the last', () => {
  expect(after('2', '6', '3/8')).toBe('26 3/8');
  expect(after('2', '6', '3/8', '7/8')).toBe('26 7/8');
  expect(after('2', '6', '.', '5')).toBe('26.5');
  expect(after('5/8')).toBe('5/8');
});

test('every sixteenth is two keys away', () => {
  const whole = ['2', '6'];
  expect(after(...whole, sixteenth)).toBe('26 1/16');
  expect(after(...whole, '3/8', sixteenth)).toBe('26 7/16');
  expect(after(...whole, '7/8', sixteenth)).toBe('26 15/16');
  expect(after(...whole, '7/8', sixteenth, sixteenth)).toBe('27');
  expect(after(sixteenth)).toBe('1/16');
  expect(typed('26½', sixteenth)).toBe('26 9/16');
});

test('what is no whole number of sixteenths stays as it was typed', () => {
  for (const text of ['26.5', '26 1/3', '26 5/32', 'five'])
    expect(typed(text, sixteenth)).toBe(text);
});

test('a length and a width stand beside the girth of their row, and go one by one', () => {
  const taped = {
    ...newRecord('1', 'Basket 1', {}),
    ...withMeasure(newRecord('1', '', {}), 'girth', 1, 640),
  };
  expect(taped.row).toBe(2);
  const long = { ...taped, ...withMeasure(taped, 'length', 1, 240) };
  const both = { ...long, ...withMeasure(long, 'width', 1, 150) };
  expect(both).toMatchObject({
    row: 2,
    girths: { 1: 640 },
    across: { 1: { length: 240, width: 150 } },
  });
  expect(measureHad(both, 'width', 1)).toBe(150);
  const less = { ...both, ...withoutMeasure(both, 'length', 1) };
  expect(less.across).toEqual({ 1: { width: 150 } });
  expect(withoutMeasure(less, 'width', 1)).toEqual({ across: {} });
});
