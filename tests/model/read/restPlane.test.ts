import fc from 'fast-check';
import { expect, test } from 'vitest';
import { restPlane } from '../../../src/model/read/restPlane.ts';

const point = fc.tuple(...[0, 1, 2].map(() => fc.double({ min: -100, max: 100, noNaN: true })));

test('no point lies under the plane that points rest on', () => {
  fc.assert(
    fc.property(fc.array(point, { minLength: 1, maxLength: 40 }), (points) => {
      const [a, b, c] = restPlane(Float64Array.from(points.flat()), 0, 0);
      for (const [x = 0, y = 0, z = 0] of points) {
        expect(z - a * x - b * y - c).toBeGreaterThan(-1e-7 * (1 + Math.hypot(a, b)));
      }
    }),
  );
});

test('no other plane under the points is higher at the centre of mass', () => {
  // A table on four legs, one of them short: it rests on the three round the centre of mass.
  const legs = [-10, -10, 0, 10, -10, 0, 10, 10, 1, -10, 10, 0];
  const [a, b, c] = restPlane(Float64Array.from(legs), -2, -1);
  expect([a, b, c].map((value) => Math.round(1e9 * value))).toEqual([0, 0, 0]);
});

test('with its centre of mass over the short leg a table tips on to it', () => {
  const legs = [-10, -10, 0, 10, -10, 0, 10, 10, 1, -10, 10, 0];
  const [a, b, c] = restPlane(Float64Array.from(legs), 8, 7);
  // Through (10, −10, 0), (10, 10, 1), (−10, 10, 0).
  expect(a).toBeCloseTo(0.05, 9);
  expect(b).toBeCloseTo(0.05, 9);
  expect(c).toBeCloseTo(0, 9);
});

test('points that do not surround the centre of mass give a level plane through the lowest', () => {
  expect(restPlane(Float64Array.of(5, 5, 3, 6, 5, 2, 5, 6, 4), 0, 0)).toEqual([0, 0, 2]);
});
