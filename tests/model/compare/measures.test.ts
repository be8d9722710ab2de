import { expect, test } from 'vitest';
import { measures } from '../../../src/model/compare/measures.ts';
import { basketOf, flared, jar, trug } from './baskets.ts';

test('each figure is the second basket less the first', () => {
  const [a, b] = [basketOf(trug), basketOf(flared)];
  const found = measures(a, b);
  for (const { difference, a: one, b: other } of found) expect(difference).toBe(other - one);
  const differenceOf = (name: string) => found.find((one) => one.name === name)?.difference;
  expect(differenceOf('Height of the wall')).toBe(b.summary.height - a.summary.height);
  expect(differenceOf('Rim, tape girth')).toBe(
    (b.rows.at(-1)?.tapeGirth ?? 0) - (a.rows.at(-1)?.tapeGirth ?? 0),
  );
  expect(differenceOf('Capacity')).toBe(b.summary.capacity - a.summary.capacity);
  expect(differenceOf('Rim, tape girth')).toBeGreaterThan(0);
  expect(differenceOf('Lean at the rim')).toBeGreaterThan(0);
  expect(differenceOf('Weavers, all')).toBeGreaterThan(0);
});

test('baskets of different bases, rows and handles have the same list of figures', () => {
  const names = measures(basketOf(trug), basketOf(jar)).map(({ name }) => name);
  expect(new Set(names).size).toBe(names.length);
  expect(measures(basketOf(jar), basketOf(jar)).every(({ difference }) => difference === 0)).toBe(
    true,
  );
});
