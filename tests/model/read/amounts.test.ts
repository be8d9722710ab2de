import { expect, test } from 'vitest';
import { readBasket } from '../../../src/model/read/readBasket.ts';
import { settleBasket } from '../../../src/model/settleBasket.ts';
import { calm, netOf, readingOf, revolved, squarePlan } from '../readings.ts';

const plan = squarePlan();
const basket = settleBasket(plan);

test('the wall of 20 rows of 5 mm and 400 mm girth is 400 × 100 mm', () => {
  expect(basket.summary.wallArea / (400 * 100)).toBeCloseTo(1, 3);
});

test('the wall of a cone is its slant height times its mean girth', () => {
  const net = netOf(plan);
  const shape = revolved(
    net,
    (row) => 70 + 2 * row,
    (row) => Math.sqrt(21) * row,
  );
  const { summary, rows } = readBasket(plan, net, shape, calm(net));
  const mean = rows.reduce((sum, { girthReached }) => sum + girthReached, 0) / rows.length;
  expect(summary.wallArea).toBeCloseTo(100 * mean, 6);
});

test('20 start-stop rows take their girth, Peirce’s crimp and a lap of four stakes each', () => {
  // Stake 1 mm and weaver 1.5 mm on stakes 400/28 mm apart.
  const x = 2.5 / (400 / 28);
  const crimp = x * Math.asin(x) + Math.sqrt(1 - x * x) - 1;
  const row = 400 * (1 + crimp) + (4 * 400) / 28;
  expect(basket.summary.weaverLength / (20 * row)).toBeCloseTo(1, 3);
});

test('a basket weighs its stakes, weavers and rim at 0.52 g/cm³', () => {
  const stakes = 14 * (100 + 2 * (100 + 70)) * 10;
  const weavers = basket.summary.weaverLength * 5 * 1.5;
  const woven = 0.52e-3 * (stakes + weavers);
  expect(basket.summary.weight).toBeGreaterThan(woven);
  expect(basket.summary.weight).toBeLessThan(2.5 * woven);
});

test('a reading alone has no amounts; they are added up from it', () => {
  expect(readingOf(plan).summary).not.toHaveProperty('weaverLength');
});
