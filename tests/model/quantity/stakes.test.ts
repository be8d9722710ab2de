import { expect, test } from 'vitest';
import { quantities } from '../../../src/model/quantity/quantities.ts';
import { roundedUp } from '../../../src/model/quantity/roundedUp.ts';
import { settleBasket } from '../../../src/model/settleBasket.ts';
import { cutStep } from '../../../src/plan/cutStep.ts';
import { planSchema } from '../../../src/plan/schema.ts';
import { inches, napkin, oblong } from './inches.ts';

test('lengths are rounded up, but a hair over a step is that step', () => {
  expect(roundedUp(100.2, 5)).toBe(105);
  expect(roundedUp(584.2000001, 6.35)).toBeCloseTo(584.2, 6);
  expect(roundedUp(590, 6.35)).toBeCloseTo(590.55, 6);
  expect(() => roundedUp(1, 0)).toThrow(/step/);
});

test('cut lengths go to a quarter inch or 5 mm unless the plan says otherwise', () => {
  const plan = planSchema.parse(oblong);
  expect(cutStep(plan)).toBe(6.35);
  expect(cutStep({ ...plan, display: { unit: 'mm' } })).toBe(5);
  expect(cutStep({ ...plan, allowances: { ...plan.allowances, roundTo: 25.4 } })).toBe(25.4);
});

const basket = settleBasket(planSchema.parse(oblong));
const { stakes } = quantities(basket);

test('the oblong of the trade facts is cut at 23 in and 20 in', () => {
  // common practice, no source: 5 × 9 stakes of 1/2 in, 1/4 in gaps, 32 rows, 2 3/4 in to tuck
  const cut = stakes.map(({ part, count, length }) => [part, count, length / 25.4]);
  expect(cut).toEqual([
    ['lengthwise stake', 5, expect.closeTo(23, 6)],
    ['crosswise stake', 8, expect.closeTo(20, 6)],
    ['crosswise stake, split at one end', 1, expect.closeTo(20, 6)],
  ]);
});

test('a stake is as long as its settled path and the tuck, within half a percent', () => {
  const { net, positions, plan } = basket;
  const stake = net.stakes.find(({ part }) => part === 'lengthwise');
  const nodes = Array.from(stake?.nodes ?? []);
  const at = (node = 0) => Array.from(positions.slice(3 * node, 3 * node + 3));
  let path = net.rows.at(-1)?.pitch ?? 0; // half a pitch over the last row at both ends
  nodes.slice(1).forEach((node, index) => {
    const [one, other] = [at(nodes[index]), at(node)];
    path += Math.hypot(...one.map((value, axis) => value - (other[axis] ?? 0)));
  });
  const needed = stakes[0]?.needed ?? 0;
  expect(Math.abs(path + 2 * plan.allowances.tuck - needed) / needed).toBeLessThan(0.005);
});

test('a published 7 × 7 basket’s 19–20 in stakes come out with 3 in to tuck at each end', () => {
  // “Harvest Napkin Basket in Square”, thebasketsampler.com; 6 in for both tucks: Country Seat 2010-09
  const square = quantities(settleBasket(planSchema.parse(napkin)));
  for (const { length } of square.stakes) {
    expect(length).toBeGreaterThanOrEqual(inches(18.9));
    expect(length).toBeLessThanOrEqual(inches(20.05));
  }
});
