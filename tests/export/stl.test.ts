import { expect, test } from 'vitest';
import { stl } from '../../src/export/stl.ts';

/** A corner of a cube, 10 mm along each edge. */
const corner = {
  points: Float64Array.from([0, 0, 0, 10, 0, 0, 0, 10, 0, 0, 0, 10]),
  triangles: Int32Array.from([0, 2, 1, 0, 1, 3, 0, 3, 2, 1, 2, 3]),
};

test('a file has a heading of 80 bytes, a count, and 50 bytes a triangle', () => {
  const bytes = stl(corner);
  expect(bytes.length).toBe(80 + 4 + 4 * 50);
  expect(new DataView(bytes.buffer).getUint32(80, true)).toBe(4);
  // readers take a file that begins with "solid" for a text
  expect(new TextDecoder().decode(bytes.subarray(0, 5))).not.toBe('solid');
});

test('a triangle is its normal and its corners, in millimetres', () => {
  const view = new DataView(stl(corner).buffer);
  const numbers = Array.from({ length: 12 }, (_, at) => view.getFloat32(84 + 4 * at, true));
  expect(numbers).toEqual([0, 0, -1, 0, 0, 0, 0, 10, 0, 10, 0, 0]);
});
