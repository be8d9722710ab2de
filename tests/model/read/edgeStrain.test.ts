import { expect, test } from 'vitest';
import { edgeStrain } from '../../../src/model/read/edgeStrain.ts';
import { settleBasket } from '../../../src/model/settleBasket.ts';
import { roundPlan } from '../../outside/round/roundBasket.ts';
import { netOf, revolved, squarePlan } from '../readings.ts';

const net = netOf(squarePlan());

test.each([0.2, 0.4, -0.3])(
  'a row on a cone frustum curves in the wall by sin(half angle) / r (sine %d)',
  (sine) => {
    const radius = (row: number) => 100 + sine * 5 * row;
    const rise = Math.sqrt(1 - sine * sine);
    const cone = revolved(net, radius, (row) => 5 * rise * row);
    for (let row = 1; row < net.rows.length; row++) {
      const curvature = Math.abs(sine) / radius(row);
      expect(edgeStrain(net, row, 8, cone)).toBeCloseTo(4 * curvature, 12);
    }
  },
);

test('a row on a cylinder does not curve in the wall', () => {
  const cylinder = revolved(
    net,
    () => 70,
    (row) => 5 * row,
  );
  for (let row = 1; row < net.rows.length; row++) {
    expect(edgeStrain(net, row, 8, cylinder)).toBeLessThan(1e-12);
  }
});

test('a row on a sphere curves in the wall by cot(θ) / ρ, and not at all on its belly', () => {
  // Between two rows the sphere's chord leans as the tangent half-way does.
  const angle = (row: number) => 0.6 + 0.05 * row;
  const sphere = revolved(
    net,
    (row) => 100 * Math.sin(angle(row)),
    (row) => -100 * Math.cos(angle(row)),
  );
  for (let row = 2; row < net.rows.length - 1; row++) {
    const curvature = Math.abs(1 / Math.tan(angle(row))) / 100;
    expect(edgeStrain(net, row, 2, sphere)).toBeCloseTo(curvature, 9);
  }
});

test('a settled cone has the edge strain of its change of girth, ΔG / (2π·p·r) · w / 2', () => {
  const [rows, pitch, sine] = [30, 5, 0.25];
  const girth = (row: number) => 2 * Math.PI * (80 + sine * pitch * (row - 0.5));
  const basket = settleBasket(roundPlan({ diameter: 160, rows, pitch, girth, ends: 24 }));
  for (const { row, edgeStrain: read } of basket.rows.slice(2, -1)) {
    const expected = ((sine / (girth(row) / (2 * Math.PI))) * pitch) / 2;
    expect(Math.abs(read / expected - 1)).toBeLessThan(0.02);
  }
});
