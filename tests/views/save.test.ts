import { expect, test } from 'vitest';
import { fileStem } from '../../src/views/save.ts';

test('a file is named after its plan, without what a file system does not like', () => {
  expect(fileStem('Orchard trug')).toBe('Orchard trug');
  expect(fileStem('  8 1/2" × 5\n trial: "b" ')).toBe('8 1 2 × 5 trial b');
  expect(fileStem('../../etc')).toBe('etc');
  expect(fileStem('...')).toBe('basket');
  expect(fileStem('/')).toBe('basket');
  expect(fileStem('x'.repeat(200))).toHaveLength(80);
});
