import { expect, test } from 'vitest';
import { differences } from '../../../src/model/compare/differences.ts';
import { placeOfRow, rowsAt } from '../../../src/views/compare/places.ts';
import { basketOf, jar, trug } from '../../model/compare/baskets.ts';

const [a, b] = [basketOf(trug), basketOf(jar)];

test('by row a place is the row of both, or of the one that still has it', () => {
  const found = differences(a, b, 'row', 'in');
  expect(rowsAt(found, 12)).toEqual({ a: 12, b: 12 });
  expect(rowsAt(found, 35)).toEqual({ a: null, b: 35 });
  expect(placeOfRow(found, 'b', 35)).toBe(35);
  expect(placeOfRow(found, 'a', 35)).toBeNull();
});

test('by height a row pointed at finds a height at which it, or the row beside it, is nearest', () => {
  const found = differences(a, b, 'height', 'in');
  for (let row = 2; row <= 31; row++) {
    const marked = rowsAt(found, placeOfRow(found, 'a', row)).a ?? Number.NaN;
    expect(Math.abs(marked - row)).toBeLessThanOrEqual(1);
  }
});

test('with nothing pointed at, or nothing settled, no row is marked', () => {
  expect(rowsAt(null, 3)).toEqual({ a: null, b: null });
  expect(rowsAt(differences(a, b, 'row', 'in'), null)).toEqual({ a: null, b: null });
  expect(placeOfRow(differences(a, b, 'row', 'in'), 'a', null)).toBeNull();
});
