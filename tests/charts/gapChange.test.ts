import { expect, test } from 'vitest';
import { gapChange } from '../../src/charts/gapChange.ts';

test('the change of one gap is a signed decimal', () => {
  expect(gapChange(0.16, 'in')).toBe('+0.006');
  expect(gapChange(-0.16, 'mm')).toBe('−0.2');
  expect(gapChange(0.001, 'cm')).toBe('0');
  expect(gapChange(Number.NaN, 'in')).toBe('–');
});
