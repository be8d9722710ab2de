import { expect, test } from 'vitest';
import { centreOfMass, nodeMass } from '../../../src/model/read/mass.ts';
import { netOf, squarePlan } from '../readings.ts';

const plan = squarePlan();
const net = netOf(plan);

test('a basket weighs what its stakes, weavers and hoops do at 0.52 g/cm³', () => {
  // 0.52 g/cm³ is the bulk density of core reed from the trade's footage per pound.
  const stakes = 14 * (100 + 2 * (100 + 70)) * 10;
  const weavers = 20 * 400 * 5 * 1.5;
  const hoops = 2 * 400 * (Math.PI / 4) * 12.7 * 3;
  const grams = nodeMass(plan, net).reduce((sum, mass) => sum + mass, 0);
  expect(grams).toBeCloseTo(0.52e-3 * (stakes + weavers + hoops), 9);
});

test('a twined row is two strands', () => {
  const plain = nodeMass(plan, net).reduce((sum, mass) => sum + mass, 0);
  const band = {
    rows: 20,
    weaver: { section: 'flat', width: 5, thickness: 1.5 },
    packing: 5 / 3,
  } as const;
  const twined = squarePlan({ bands: [{ ...band, packing: 1, weave: 'twined' }] });
  const twinedNet = netOf(twined);
  const lower = 14 * 2 * 20 * (5 - 3) * 10;
  const more = 20 * 400 * 5 * 1.5;
  const grams = nodeMass(twined, twinedNet).reduce((sum, mass) => sum + mass, 0);
  expect(grams).toBeCloseTo(plain + 0.52e-3 * (more - lower), 9);
});

test('the centre of mass of a symmetric basket is on its axis', () => {
  const [x, y] = centreOfMass(nodeMass(plan, net), net.start);
  expect(Math.hypot(x, y)).toBeLessThan(1e-9);
});
