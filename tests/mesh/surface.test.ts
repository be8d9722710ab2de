import { expect, test } from 'vitest';
import { nodeNormals, tangentAt } from '../../src/mesh/surface.ts';
import { demoPlan, startBasket } from './demoBasket.ts';
import { pointOf } from './expectSound.ts';

const basket = startBasket(demoPlan());
const normals = nodeNormals(basket.net, basket.positions);

test('the wall faces away from the middle and the base faces down', () => {
  for (const { nodes } of basket.net.ends) {
    const [x, y] = pointOf(basket.positions, nodes[16] ?? 0);
    const [nx, ny] = pointOf(normals, nodes[16] ?? 0);
    expect(nx * x + ny * y).toBeGreaterThan(0);
  }
  for (let node = 0; node < basket.net.baseNodeCount; node += 1) {
    expect(pointOf(normals, node)[2]).toBeLessThan(-0.9);
  }
});

test('on a circle the tangent is that of the circle, however uneven its points', () => {
  const angles = [0.1, 0.3, 0.9];
  const points = Float64Array.from(
    angles.flatMap((angle) => [5 * Math.cos(angle), 5 * Math.sin(angle), 0]),
  );
  const out = new Float64Array(3);
  tangentAt(out, 0, points, 0, 3, 6, Float64Array.of(Math.cos(0.3), Math.sin(0.3), 0), 0);
  expect(out[0]).toBeCloseTo(-Math.sin(0.3), 9);
  expect(out[1]).toBeCloseTo(Math.cos(0.3), 9);
});

test('three points in one place still have a direction, square to the normal', () => {
  const out = new Float64Array(3);
  tangentAt(out, 0, new Float64Array(9), 0, 3, 6, Float64Array.of(0, 0, -1), 0);
  expect(Math.hypot(...out)).toBeCloseTo(1, 12);
  expect(out[2]).toBeCloseTo(0, 12);
});
