import { expect, test } from 'vitest';
import { fineText, isAsShown, lengthEntry } from '../../src/form/lengthEntry.ts';

const gap = { label: 'Gap', unit: 'mm', least: 0, most: 200 } as const;
const inches = { ...gap, unit: 'in' } as const;

test('a length is read in any unit', () => {
  expect(lengthEntry('12', gap)).toEqual({ ok: true, mm: 12 });
  expect(lengthEntry('3 1/2', inches)).toEqual({ ok: true, mm: 88.9 });
  expect(lengthEntry('3.5in', gap)).toEqual({ ok: true, mm: 88.9 });
  expect(lengthEntry('89 mm', inches)).toEqual({ ok: true, mm: 89 });
});

test('a length outside its limits is refused with what is allowed and what was found', () => {
  expect(lengthEntry('-3', gap)).toEqual({ ok: false, problem: 'Gap: 0 to 200 mm; found -3' });
  expect(lengthEntry('1 m', gap)).toMatchObject({ ok: false });
});

test('a limit typed as it is shown is taken, though it was rounded for the screen', () => {
  expect(lengthEntry('7 7/8', inches)).toEqual({ ok: true, mm: 200 });
});

test('the sentence about a length that cannot be read starts with the name of the field', () => {
  const entry = lengthEntry('wide', gap);
  expect(entry.ok ? '' : entry.problem).toMatch(/^Gap: “wide”/);
});

test.each(['3/8', '3/8 in', '⅜"', ' 0.375 '])(
  '%s typed over a gap of 9.5 mm, shown as 3/8 in, is the gap as it is',
  (typed) => expect(isAsShown(typed, 9.5, 'in')).toBe(true),
);

test('another length, or a finer one than is shown, is a new length', () => {
  for (const typed of ['7/16', '9.6 mm', '0.38', 'wide', '']) {
    expect(isAsShown(typed, 9.5, 'in')).toBe(false);
  }
  expect(isAsShown('9.5', 9.53, 'mm')).toBe(true);
  expect(isAsShown('9.53', 9.53, 'mm')).toBe(false);
});

test('a fine size is told in millimetres where sixteenths would lose it', () => {
  expect(fineText(1.2, 'in')).toBe('1.2 mm');
  expect(fineText(12.7, 'in')).toBe('');
  expect(fineText(1.2, 'mm')).toBe('');
});
