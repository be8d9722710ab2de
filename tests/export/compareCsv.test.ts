import papaparse from 'papaparse';
import { expect, test } from 'vitest';
import type { ComparedBaskets } from '../../src/export/compareCsv.ts';
import { compareCsv } from '../../src/export/compareCsv.ts';
import { differences } from '../../src/model/compare/differences.ts';
import { measures } from '../../src/model/compare/measures.ts';
import { basketOf, flared, jar, trug } from '../model/compare/baskets.ts';

function compared(other: typeof trug, by: 'row' | 'height'): ComparedBaskets {
  const [a, b] = [basketOf(trug), basketOf(other)];
  return { a, b, differences: differences(a, b, by, 'in'), measures: measures(a, b) };
}

function linesOf(text: string) {
  const { data, errors } = papaparse.parse<Record<string, string>>(text, {
    header: true,
    skipEmptyLines: true,
  });
  expect(errors).toEqual([]);
  return data;
}

test('every line has a number for each plan and their difference, in the unit beside them', () => {
  const lines = linesOf(compareCsv(compared(flared, 'row')));
  const rows = lines.filter(({ part }) => part === 'tape girth of row');
  expect(rows).toHaveLength(32);
  for (const line of lines) {
    const [a, b] = [Number(line['A: Orchard trug']), Number(line['B: Orchard trug'])];
    expect(Math.abs(b - a - Number(line['difference (B less A)']))).toBeLessThan(2e-4);
  }
  const [, , , ...rest] = rows.map((line) => Number(line['B: Orchard trug']) * 25.4);
  expect(rest[0]).toBeCloseTo(basketOf(flared).rows[3]?.tapeGirth ?? 0, 1);
});

test('rows and heights that one basket does not have are left empty', () => {
  const rows = linesOf(compareCsv(compared(jar, 'row')));
  expect(rows.find(({ figure }) => figure === '36')?.['A: Orchard trug']).toBe('');
  const heights = linesOf(compareCsv(compared(jar, 'height')));
  expect(heights.some(({ part }) => part === 'tape girth at height')).toBe(true);
  expect(heights.every((line) => !Object.values(line).includes('NaN'))).toBe(true);
});

test('a name with a comma and a quote is read back as it is', () => {
  const { a, ...rest } = compared(flared, 'row');
  const named = { ...a, plan: { ...a.plan, name: 'Trug, "wide"' } };
  const [line] = linesOf(compareCsv({ ...rest, a: named }));
  expect(Object.keys(line ?? {})).toContain('A: Trug, "wide"');
});
