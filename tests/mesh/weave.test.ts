import { expect, test } from 'vitest';
import { weaverIsOutside } from '../../src/mesh/weave.ts';
import { twillStep } from '../../src/plan/weaveFacts.ts';

/** Over ('o', outside) and under ('u') of `count` ends from `row`, end 0 on: along the weaver's way. */
function path(weave: 'continuous' | 'twill', ends: number, count: number): string {
  return Array.from({ length: count }, (_, at) =>
    weaverIsOutside(weave, Math.floor(at / ends), at % ends, ends) ? 'o' : 'u',
  ).join('');
}

/** The matrix of over and under, a text for each row. */
function matrix(ends: number, rows: number): string[] {
  const all = path('twill', ends, ends * rows);
  return Array.from({ length: rows }, (_, row) => all.slice(row * ends, (row + 1) * ends));
}

test.each([28, 29, 30, 31])(
  'a twill on %i ends goes over two and under two all the way',
  (ends) => {
    expect(path('twill', ends, 4 * ends)).toBe('oouu'.repeat(ends));
  },
);

test.each([29, 31, 33, 35])(
  'on %i ends every row of a twill steps by one, the way it is announced',
  (ends) => {
    const step = twillStep(ends);
    expect(Math.abs(step)).toBe(1);
    const rows = matrix(ends, 8);
    rows.slice(1).forEach((row, at) => {
      const before = rows[at] ?? '';
      // all ends that have a fellow one step on in the row below
      for (let end = 1; end + 1 < ends; end += 1) expect(row[end]).toBe(before[end + step]);
      expect(row).not.toBe(before);
    });
  },
);

test('a twill steps one way on 29 ends and the other way on 31', () => {
  expect(matrix(29, 3).map((row) => row.slice(0, 8))).toEqual(['oouuoouu', 'ouuoouuo', 'uuoouuoo']);
  expect(matrix(31, 3).map((row) => row.slice(0, 8))).toEqual(['oouuoouu', 'uoouuoou', 'uuoouuoo']);
});

test('a twill repeats itself on a multiple of four, and steps two at a time on two more', () => {
  const [first, second] = matrix(28, 2);
  expect(second).toBe(first);
  const [below, above] = matrix(30, 2);
  expect(above?.slice(0, 28)).toBe(below?.slice(2));
});

test('a twined pair goes on over and under as it climbs, on an odd and on an even count', () => {
  for (const ends of [28, 29]) {
    const sides = Array.from({ length: 4 * ends }, (_, at) =>
      weaverIsOutside('twined', Math.floor(at / ends), at % ends, ends),
    );
    expect(sides.every((is, at) => at === 0 || is !== sides[at - 1])).toBe(true);
  }
});

test('a continuous weaver changes sides at every end, and on an even count repeats its own path', () => {
  expect(path('continuous', 29, 4 * 29)).toBe('ou'.repeat(2 * 29));
  expect(path('continuous', 6, 12)).toBe('ouououououou');
});
