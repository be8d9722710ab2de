import { expect, test } from 'vitest';
import { readBasket } from '../../../src/model/read/readBasket.ts';
import { calm, netOf, place, squarePlan } from '../readings.ts';

const plan = squarePlan();
const net = netOf(plan);

/** The square basket as a box whose base has the height `z(x, y)`. */
function boxOn(z: (x: number, y: number) => number) {
  const box = Float64Array.from(net.start);
  for (let node = 0; node < net.baseNodeCount; node++) {
    const [x, y] = place(net.start, node);
    box[3 * node + 2] = z(x, y);
  }
  for (const { nodes } of net.ends) {
    const [x, y] = place(net.start, nodes[0] ?? 0);
    nodes.forEach((node, row) => {
      box.set([x, y, z(x, y) + (row === 0 ? 0 : 5 * row - 2.5)], 3 * node);
    });
  }
  return readBasket(plan, net, box, calm(net)).summary;
}

test('a base that is lifted between its corners stands on four feet', () => {
  const arched = boxOn((x, y) => 12 - (12 * (x * x + y * y)) / 5000);
  expect(arched.feet).toBe(4);
});

test('the foot height is how far the corners stand below the middles of the edges', () => {
  // Height falls from 12 in the middle by 12·r²/5000: 6 at mid-edge, 0.57 and 0 about the corners;
  // the stake's own half thickness differs between crossing and edge.
  const { footHeight } = boxOn((x, y) => 12 - (12 * (x * x + y * y)) / 5000);
  expect(footHeight).toBeGreaterThan(4);
  expect(footHeight).toBeLessThan(6.1);
});

test('the clearance is the height under the middle of the base', () => {
  const { centreClearance } = boxOn((x, y) => 12 - (12 * (x * x + y * y)) / 5000);
  expect(centreClearance).toBeGreaterThan(10);
  expect(centreClearance).toBeLessThan(12);
});

test('a flat base stands on one place, with no foot and no clearance', () => {
  const flat = boxOn(() => 0);
  expect([flat.feet, flat.centreClearance]).toEqual([1, 0]);
  expect(flat.footHeight).toBeCloseTo(0, 9);
});

test('a base that hangs in the middle stands on one place and has no foot', () => {
  const sagging = boxOn((x, y) => (12 * (x * x + y * y)) / 5000);
  expect([sagging.feet, sagging.footHeight]).toEqual([1, 0]);
});

test('a basket on two runners stands in two places', () => {
  expect(boxOn((x) => 5 - Math.abs(x) / 10).feet).toBe(2);
});
