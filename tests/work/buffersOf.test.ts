import { expect, test } from 'vitest';
import { buffersOf } from '../../src/work/buffersOf.ts';

test('finds every buffer once, however deep it lies', () => {
  const shared = new Float32Array(4);
  const indices = new Uint32Array(2);
  const mesh = { stakes: { shared, indices }, weavers: { same: shared, list: [indices, null, 3] } };
  expect(buffersOf(mesh)).toEqual([shared.buffer, indices.buffer]);
});
