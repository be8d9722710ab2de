import { expect, test } from 'vitest';
import { rowSpans } from '../../src/charts/rowSpans.ts';

test('neighbouring rows are one span, and each row counts once', () => {
  expect(rowSpans([14, 3, 4, 14, 5])).toEqual([
    { first: 3, last: 5 },
    { first: 14, last: 14 },
  ]);
  expect(rowSpans([])).toEqual([]);
});
