import { expect, test } from 'vitest';
import { angleDeficits } from '../../../src/model/read/angleDeficit.ts';
import { settleBasket } from '../../../src/model/settleBasket.ts';
import { demos } from '../../../src/plan/demo/demos.ts';
import { netOf, place, squarePlan } from '../readings.ts';

const sum = (values: Iterable<number>) => [...values].reduce((total, value) => total + value, 0);

test.each(demos)('curvature and turning of $title come to 2π (Gauss–Bonnet)', ({ plan }) => {
  const { net, positions } = settleBasket(plan);
  expect(sum(angleDeficits(net, positions))).toBeCloseTo(2 * Math.PI, 9);
});

test('an open box has all its curvature at its four corners, π/2 each', () => {
  const net = netOf(squarePlan());
  const box = Float64Array.from(net.start, (value, i) => (i % 3 === 2 ? 0 : value));
  net.ends.forEach(({ nodes }) => {
    nodes.forEach((node, row) => {
      const [x, y] = place(net.start, nodes[0] ?? 0);
      box.set([x, y, 5 * row], 3 * node);
    });
  });
  const deficits = angleDeficits(net, box);
  const edge = net.rows[0]?.nodes ?? [];
  const inside = sum(deficits.subarray(0, net.baseNodeCount));
  const corners = net.ends.flatMap(({ corner, nodes }) => (corner ? [nodes[0] ?? 0] : []));
  expect(inside).toBeCloseTo(0, 9);
  expect(sum(Array.from(edge, (node) => deficits[node] ?? 0))).toBeCloseTo(2 * Math.PI, 9);
  // Each corner is cut by one cell, so its π/2 lies in two nodes.
  expect(corners).toHaveLength(8);
  for (const node of corners) expect(deficits[node]).toBeCloseTo(Math.PI / 4, 9);
});
