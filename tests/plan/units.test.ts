import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Unit } from '../../src/plan/schema.ts';
import { formatChange, formatLength, parseLength, shownChange } from '../../src/plan/units.ts';

const units: readonly Unit[] = ['in', 'cm', 'mm'];

test.each([
  ['3 1/2', 88.9],
  ['3.5in', 88.9],
  ['3 1/2"', 88.9],
  ['3½', 88.9],
  ['3 ½ in', 88.9],
  ['3-1/2 inches', 88.9],
  ['3 1/2″', 88.9],
  ['89 mm', 89],
  ['8.9cm', 89],
  ['8,9 cm', 89],
  ['1/4', 6.35],
  ['⅜', 9.525],
  ['1⁄2', 12.7],
  ['.5 In.', 12.7],
  ['0,125', 3.175],
  ['5. MM', 5],
  ['0', 0],
  ['+2 in', 50.8],
  [' 7 mm ', 7],
  ['１２．５', 317.5],
  ['１２，５ｃｍ', 125],
  ['１２、５　㎝', 125],
  ['８。９㎝', 89],
  ['３　１／２', 88.9],
  ['８９㎜', 89],
  ['12,5 mm', 12.5],
])('%s, inches when nothing is said, is %d mm', (text, mm) => {
  const length = parseLength(text, 'in');
  expect(length.ok).toBe(true);
  expect(length.ok && length.mm).toBeCloseTo(mm, 10);
});

test('a bare number is in the given unit', () => {
  expect(parseLength('12', 'cm')).toEqual({ ok: true, mm: 120 });
  expect(parseLength('12', 'mm')).toEqual({ ok: true, mm: 12 });
});

test.each([
  ['', /Type a length/],
  ['   ', /Type a length/],
  ['three', /the unit is in, ", cm or mm, or none at all/],
  ['3 furlongs', /the unit is/],
  ['3 constructor', /the unit is/],
  ['3 1/0', /not a number/],
  ['1/2/3', /not a number/],
  ['1.2.3', /not a number/],
  ['in', /not a number/],
  ['/', /not a number/],
  ['NaN', /the unit is/],
  ['Infinity', /the unit is/],
  ['1e5', /the unit is/],
  ['-3', /cannot be negative/],
  ['−3 mm', /cannot be negative/],
  ['1,250 mm', /two ways/],
  ['１，２５０ mm', /two ways/],
  ['999999999', /longer than 100 m/],
  ['9'.repeat(400), /not a number/],
])('%j is refused with a sentence', (text, sentence) => {
  const length = parseLength(text, 'in');
  expect(length.ok ? '' : length.problem).toMatch(sentence);
});

test('a negative length is read where it is allowed', () => {
  for (const text of ['-1/2', '−1/2', '- 0.5 in']) {
    expect(parseLength(text, 'in', { signed: true })).toEqual({ ok: true, mm: -12.7 });
  }
});

test('any text gives a finite length or a sentence', () => {
  const letters = fc.constantFrom(
    ...'0123456789０５９ .,．，、。ー/／-+−½⅞"\'incme㎜ｃ⁄'.split(''),
  );
  const texts = fc.oneof(
    fc.string(),
    fc.array(letters).map((all) => all.join('')),
  );
  fc.assert(
    fc.property(texts, fc.constantFrom(...units), fc.boolean(), (text, unit, signed) => {
      const length = parseLength(text, unit, { signed });
      if (length.ok) expect(Math.abs(length.mm)).toBeLessThanOrEqual(100_000);
      else expect(length.problem).toMatch(/^\S.*\.$/s);
    }),
    { numRuns: 5000 },
  );
});

test.each([
  [88.9, 'in', '3 1/2 in'],
  [17.4625, 'in', '11/16 in'],
  [0, 'in', '0 in'],
  [89, 'cm', '8.9 cm'],
  [90, 'cm', '9 cm'],
  [89.04, 'mm', '89 mm'],
  [12.7, 'mm', '12.7 mm'],
  [-12.7, 'in', '−1/2 in'],
  [-0.01, 'mm', '0 mm'],
  [Number.NaN, 'mm', '–'],
] as const)('%d mm in %s is shown as %s', (mm, unit, text) => {
  expect(formatLength(mm, unit)).toBe(text);
});

test('the unit can be left off', () => {
  expect(formatLength(88.9, 'in', { withUnit: false })).toBe('3 1/2');
});

test.each([
  [4.7625, 'in', '+3/16 in'],
  [-4.7625, 'in', '−3/16 in'],
  [0.2, 'in', '0 in'],
  [-0.2, 'in', '0 in'],
  [5, 'mm', '+5 mm'],
  [-25, 'cm', '−2.5 cm'],
] as const)('a change of %d mm in %s is shown as %s', (mm, unit, text) => {
  expect(formatChange(mm, unit)).toBe(text);
});

test('a change as shown is what subtracting the shown lengths on paper gives', () => {
  fc.assert(
    fc.property(lengths, lengths, fc.constantFrom(...units), (from, to, unit) => {
      const [one, other, change] = [
        formatLength(from, unit),
        formatLength(to, unit),
        formatChange(shownChange(from, to, unit), unit),
      ].map((text) => {
        const read = parseLength(text, unit, { signed: true });
        return read.ok ? read.mm : Number.NaN;
      });
      expect((other ?? 0) - (one ?? 0)).toBeCloseTo(change ?? Number.NaN, 6);
    }),
  );
});

const halfStep: Readonly<Record<Unit, number>> = { in: 25.4 / 32, cm: 0.5, mm: 0.05 };
const lengths = fc.double({ min: -5000, max: 5000, noNaN: true });

test('what is shown is read back within half of the last digit', () => {
  const options = fc.record({ withUnit: fc.boolean() });
  fc.assert(
    fc.property(lengths, fc.constantFrom(...units), options, (mm, unit, withUnit) => {
      const length = parseLength(formatLength(mm, unit, withUnit), unit, { signed: true });
      const off = length.ok ? Math.abs(length.mm - mm) : Number.NaN;
      expect(off).toBeLessThanOrEqual(halfStep[unit] + 1e-9);
    }),
  );
});

test('a change that is shown is read back as well', () => {
  fc.assert(
    fc.property(lengths, fc.constantFrom(...units), (mm, unit) => {
      const length = parseLength(formatChange(mm, unit), unit, { signed: true });
      const off = length.ok ? Math.abs(length.mm - mm) : Number.NaN;
      expect(off).toBeLessThanOrEqual(halfStep[unit] + 1e-9);
    }),
  );
});

test('what is read back is shown the same', () => {
  fc.assert(
    fc.property(lengths, fc.constantFrom(...units), (mm, unit) => {
      const shown = formatLength(mm, unit);
      const length = parseLength(shown, unit, { signed: true });
      expect(length.ok && formatLength(length.mm, unit)).toBe(shown);
    }),
  );
});
