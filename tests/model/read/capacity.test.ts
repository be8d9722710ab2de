import { expect, test } from 'vitest';
import { readBasket } from '../../../src/model/read/readBasket.ts';
import { volumeBelow } from '../../../src/model/read/volume.ts';
import { calm, netOf, revolved, squarePlan } from '../readings.ts';

/** A frustum of `sides` sides without a lid: closed below, counter-clockwise from outside. */
function frustum(sides: number, low: number, high: number, height: number) {
  const points = [0, 0, 0];
  for (const [radius, z] of [
    [low, 0],
    [high, height],
  ] as const) {
    for (let i = 0; i < sides; i++) {
      const angle = (2 * Math.PI * i) / sides;
      points.push(radius * Math.cos(angle), radius * Math.sin(angle), z);
    }
  }
  const triangles: number[] = [];
  for (let i = 0; i < sides; i++) {
    const [a, b] = [1 + i, 1 + ((i + 1) % sides)];
    triangles.push(0, b, a, a, b, b + sides, a, b + sides, a + sides);
  }
  return { points: Float64Array.from(points), triangles: Int32Array.from(triangles) };
}

test('a frustum of n sides holds h(r² + rR + R²)/3 times (n/2)·sin(2π/n)', () => {
  const { points, triangles } = frustum(30, 80, 110, 90);
  const section = 15 * Math.sin((2 * Math.PI) / 30);
  const exact = (section * 90 * (80 * 80 + 80 * 110 + 110 * 110)) / 3;
  expect(volumeBelow(points, triangles, 90)).toBeCloseTo(exact, 4);
});

test('filled to half its height it holds what the lower half holds', () => {
  const { points, triangles } = frustum(30, 80, 110, 90);
  const section = 15 * Math.sin((2 * Math.PI) / 30);
  const exact = (section * 45 * (80 * 80 + 80 * 95 + 95 * 95)) / 3;
  expect(volumeBelow(points, triangles, 45)).toBeCloseTo(exact, 4);
});

test('a half ball of 200 rings holds 2πr³/3', () => {
  const sides = 400;
  const rings = 200;
  const points = [0, 0, -100];
  const triangles: number[] = [];
  for (let k = 1; k <= rings; k++) {
    const down = (Math.PI / 2) * (k / rings);
    for (let i = 0; i < sides; i++) {
      const angle = (2 * Math.PI * i) / sides;
      const r = 100 * Math.sin(down);
      points.push(r * Math.cos(angle), r * Math.sin(angle), -100 * Math.cos(down));
      const [a, b] = [1 + (k - 1) * sides + i, 1 + (k - 1) * sides + ((i + 1) % sides)];
      if (k === 1) triangles.push(0, b, a);
      else triangles.push(a - sides, b - sides, b, a - sides, b, a);
    }
  }
  const volume = volumeBelow(Float64Array.from(points), Int32Array.from(triangles), 0);
  expect(volume / ((2 * Math.PI * 1e6) / 3)).toBeCloseTo(1, 3);
});

test('a round pot holds its inner circle times its inner height', () => {
  // 28 ends, 20 rows of 5 mm, radius 80 in the middle of the wall; inside, half a stake and a weaver
  // less all round and one stake over the base's middle.
  const plan = squarePlan({ girthLine: { points: [{ row: 20, girth: 160 * Math.PI }] } });
  const net = netOf(plan);
  const wall = (row: number) => (row === 0 ? 0 : 5 * row - 2.5);
  const pot = readBasket(
    plan,
    net,
    revolved(net, () => 80, wall),
    calm(net),
  );
  const inside = Math.PI * (80 - 2) ** 2 * (100 - 1);
  expect(pot.summary.capacity / inside).toBeGreaterThan(0.99);
  expect(pot.summary.capacity / inside).toBeLessThan(1.01);
});
