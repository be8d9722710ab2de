import { expect, test } from 'vitest';
import { rocks } from '../../../src/model/finding/rocks.ts';
import { domed } from '../readings.ts';

test('a base that hangs in the middle rocks, by how far it hangs below its corners', () => {
  const [finding] = rocks(domed(-8));
  expect(finding).toMatchObject({ kind: 'rocks', severity: 'warn', row: null });
  expect(finding?.value).toBeCloseTo(8, 0);
  expect(finding?.text).toContain('Push the middle of the base in further');
});

test('a base that is lifted in the middle does not rock', () => {
  expect(rocks(domed(8))).toEqual([]);
});

test('a flat base does not rock', () => {
  expect(rocks(domed(0))).toEqual([]);
});

test('a base that hangs by less than a table is uneven does not rock', () => {
  expect(rocks(domed(-0.2))).toEqual([]);
});
