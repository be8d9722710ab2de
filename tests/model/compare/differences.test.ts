import papaparse from 'papaparse';
import { expect, test } from 'vitest';
import { rowsCsv } from '../../../src/export/rowsCsv.ts';
import { differences } from '../../../src/model/compare/differences.ts';
import type { Plan } from '../../../src/plan/schema.ts';
import { basketOf, flared, jar, trug } from './baskets.ts';

/** Column `tape girth (mm)` of the row chart, read by a CSV library. */
function chart(plan: Plan): number[] {
  const basket = basketOf(plan);
  const inMm = { ...basket, plan: { ...plan, display: { unit: 'mm' } } } as const;
  const { data } = papaparse.parse<Record<string, string>>(rowsCsv(inMm), {
    header: true,
    skipEmptyLines: true,
  });
  return data.map((line) => Number(line['tape girth (mm)']));
}

test('by row the differences, their signs and their total are those of the two charts subtracted', () => {
  const [a, b] = [chart(trug), chart(flared)];
  const { places, total, most } = differences(basketOf(trug), basketOf(flared), 'row', 'in');
  expect(places.map(({ place }) => place)).toEqual(a.map((_, index) => index + 1));
  const plain = a.map((girth, index) => (b[index] ?? Number.NaN) - girth);
  places.forEach(({ difference, perGap }, index) => {
    expect(difference).toBeCloseTo(plain[index] ?? Number.NaN, 1);
    expect(perGap).toBeCloseTo((plain[index] ?? Number.NaN) / basketOf(trug).summary.ends, 3);
  });
  const sum = (girths: readonly number[]) => girths.reduce((all, girth) => all + girth, 0);
  expect(total.places).toBe(32);
  expect(total.a).toBeCloseTo(sum(a), 0);
  expect(total.b).toBeCloseTo(sum(b), 0);
  expect(total.difference).toBeCloseTo(sum(plain), 0);
  expect(most?.place).toBe(32);
  expect(most?.difference).toBeGreaterThan(50);
});

test('the other way round every sign turns', () => {
  const there = differences(basketOf(trug), basketOf(flared), 'row', 'in');
  const back = differences(basketOf(flared), basketOf(trug), 'row', 'in');
  expect(back.places.map(({ difference }) => -difference)).toEqual(
    there.places.map(({ difference }) => difference),
  );
  expect(back.total.difference).toBeCloseTo(-there.total.difference, 9);
});

test('a basket compared with itself differs nowhere', () => {
  for (const by of ['row', 'height'] as const) {
    const { places, most, total } = differences(basketOf(trug), basketOf(trug), by, 'cm');
    expect(places.every(({ difference, perGap }) => difference === 0 && perGap === 0)).toBe(true);
    expect(most).toBeNull();
    expect(total.difference).toBe(0);
  }
});

test('rows that one basket does not have are there, without a difference', () => {
  const { places, total } = differences(basketOf(trug), basketOf(jar), 'row', 'in');
  expect(places).toHaveLength(36);
  expect(total.places).toBe(32);
  for (const { rowA, rowB, a, b, difference } of places.slice(32)) {
    expect([rowA, a, difference]).toEqual([null, Number.NaN, Number.NaN]);
    expect(rowB).toBeGreaterThan(32);
    expect(b).toBeGreaterThan(0);
  }
});

test('per stake gap, baskets of different ends compare the girth of one gap', () => {
  const [a, b] = [basketOf(trug), basketOf(jar)];
  const few = { ...b, summary: { ...b.summary, ends: 20 } };
  const { places } = differences(a, few, 'row', 'in');
  const [first] = places;
  expect(first?.perGap).toBeCloseTo((first?.b ?? 0) / 20 - (first?.a ?? 0) / a.summary.ends, 9);
});
