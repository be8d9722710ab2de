import { expect, test } from 'vitest';
import { nodeMass } from '../../../src/model/read/mass.ts';
import { stand } from '../../../src/model/read/stand.ts';
import { underside } from '../../../src/model/read/underside.ts';
import { netOf, place, squareBase, squarePlan } from '../readings.ts';

const lopsided = squarePlan({ oddEnd: { kind: 'added', at: 'corner' } });

/** Every point turned by a rotation about each axis in turn, and moved. */
function moved(shape: Float64Array): Float64Array {
  const [c, s] = [Math.cos(0.8), Math.sin(0.8)];
  const to = new Float64Array(shape.length);
  for (let node = 0; 3 * node < shape.length; node++) {
    let [x, y, z] = place(shape, node);
    [x, y] = [c * x - s * y, s * x + c * y];
    [y, z] = [c * y - s * z, s * y + c * z];
    [x, z] = [c * x + s * z, c * z - s * x];
    to.set([x + 300, y - 20, z + 7], 3 * node);
  }
  return to;
}

test('a basket stands the same however its shape lies', () => {
  const net = netOf(lopsided);
  const mass = nodeMass(lopsided, net);
  const one = stand(lopsided, net, net.start, mass);
  const other = stand(lopsided, net, moved(net.start), mass);
  const apart = one.reduce(
    (most, value, i) => Math.max(most, Math.abs(value - (other[i] ?? 0))),
    0,
  );
  expect(apart).toBeLessThan(1e-6);
});

test('the lowest outer face is at height 0', () => {
  const net = netOf(lopsided);
  const standing = stand(lopsided, net, net.start, nodeMass(lopsided, net));
  expect(Math.min(...underside(lopsided, net, standing))).toBeCloseTo(0, 9);
});

test('the middle of the base is on the z axis and its length lies along x', () => {
  const net = netOf(lopsided);
  const standing = stand(lopsided, net, moved(net.start), nodeMass(lopsided, net));
  const corners = net.frame.map((node) => place(standing, node));
  expect(corners.reduce((sum, [x]) => sum + x, 0)).toBeCloseTo(0, 9);
  expect(corners.reduce((sum, [, y]) => sum + y, 0)).toBeCloseTo(0, 9);
  expect((corners[1]?.[1] ?? 1) - (corners[0]?.[1] ?? 0)).toBeCloseTo(0, 1);
});

test('a basket with two mirror planes stays symmetric, even on a single point', () => {
  const plan = squareBase({ centreLift: 0 });
  const net = netOf(plan);
  const dented = Float64Array.from(net.start);
  // Middle pushed down: it stands on one crossing.
  for (let node = 0; node < net.baseNodeCount; node++) {
    const [x, y] = place(dented, node);
    dented[3 * node + 2] = -8 + 0.002 * (x * x + y * y);
  }
  const standing = stand(plan, net, dented, nodeMass(plan, net));
  net.mirror.x?.forEach((image, node) => {
    const [x, y, z] = place(standing, node);
    const [u, v, w] = place(standing, image);
    expect(Math.hypot(x + u, y - v, z - w)).toBeLessThan(1e-9);
  });
});
