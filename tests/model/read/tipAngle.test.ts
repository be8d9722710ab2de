import { expect, test } from 'vitest';
import { tipAngle } from '../../../src/model/read/tipAngle.ts';

const box = (length: number, width: number, height: number) =>
  Float64Array.from(
    [0, height].flatMap((z) => [
      ...[-length / 2, -width / 2, z, length / 2, -width / 2, z],
      ...[length / 2, width / 2, z, -length / 2, width / 2, z],
    ]),
  );

const degrees = 180 / Math.PI;

test('a box tips when its centre of mass is over an edge: atan of half the width over its height', () => {
  const angle = tipAngle(box(100, 60, 200), [0, 0, 80], [0, 1, 2, 3]);
  expect(angle).toBeCloseTo(degrees * Math.atan2(30, 80), 9);
});

test('it tips sooner towards the side that its centre of mass is nearer to', () => {
  const angle = tipAngle(box(100, 60, 200), [40, 0, 80], [0, 1, 2, 3]);
  expect(angle).toBeCloseTo(degrees * Math.atan2(10, 80), 9);
});

test('a three-legged stool tips over the line between two legs', () => {
  const legs = Float64Array.from(
    [0, 120, 240].flatMap((at) => [50 * Math.cos(at / degrees), 50 * Math.sin(at / degrees), 0]),
  );
  expect(tipAngle(legs, [0, 0, 40], [0, 1, 2])).toBeCloseTo(degrees * Math.atan2(25, 40), 9);
});

test('a wall that flares far over its base catches it', () => {
  // On its feet alone it would tip at atan(20/50) = 21.8°; on its rim, 90 out and 30 down, at 71.6°.
  const ring = (radius: number, z: number) =>
    Array.from({ length: 72 }, (_, i) => (2 * Math.PI * i) / 72).flatMap((angle) => [
      radius * Math.cos(angle),
      radius * Math.sin(angle),
      z,
    ]);
  const cup = Float64Array.from([...ring(20, 0), ...ring(90, 20)]);
  const feet = Array.from({ length: 72 }, (_, i) => i);
  expect(tipAngle(cup, [0, 0, 50], feet)).toBeCloseTo(degrees * Math.atan2(90, 30), 1);
});

test('nothing tips later than lying on its side', () => {
  expect(tipAngle(box(400, 400, 10), [0, 0, 5], [0, 1, 2, 3])).toBeLessThanOrEqual(90);
});
