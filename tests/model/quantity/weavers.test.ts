import { expect, test } from 'vitest';
import type { WeaverNeed } from '../../../src/model/quantity/weavers.ts';
import { weaverNeeds } from '../../../src/model/quantity/weavers.ts';
import { settleBasket } from '../../../src/model/settleBasket.ts';
import { demos } from '../../../src/plan/demo/demos.ts';
import type { Plan, Weave } from '../../../src/plan/schema.ts';
import { planSchema } from '../../../src/plan/schema.ts';
import { inches, napkin, oblong } from './inches.ts';

const plan = planSchema.parse(oblong);
const basket = settleBasket(plan);
const [weaver] = weaverNeeds(basket) as [WeaverNeed];

test('a splice goes back 4 stakes', () => {
  // common practice, no source
  const girth = basket.rows.reduce((sum, row) => sum + row.girthReached, 0) / basket.rows.length;
  expect(weaver.lapStakes).toBe(4);
  expect(weaver.lap / (girth / 29)).toBeCloseTo(4, 1);
});

test('the start is thinned over 8–12 in and the end over 5–6 in', () => {
  // common practice, no source
  expect(weaver.startTaper).toBeGreaterThanOrEqual(inches(8));
  expect(weaver.startTaper).toBeLessThanOrEqual(inches(12));
  expect(weaver.endTaper).toBeGreaterThanOrEqual(inches(5));
  expect(weaver.endTaper).toBeLessThanOrEqual(inches(6));
});

test('strands of the usable length reach, and one fewer would not', () => {
  const { usableStrand } = plan.allowances;
  expect(weaver.strands * usableStrand).toBeGreaterThanOrEqual(weaver.length);
  expect((weaver.strands - 1) * usableStrand).toBeLessThan(weaver.length);
  expect(weaver.spliceRows).toHaveLength(weaver.strands - 1);
  expect([...weaver.spliceRows].sort((one, other) => one - other)).toEqual(weaver.spliceRows);
});

test('a weaver is a little longer than the rows it makes', () => {
  const way = basket.rows.reduce((sum, row) => sum + row.girthReached, 0);
  const laps = (weaver.strands - 1) * weaver.lap;
  expect((weaver.length - laps) / way - 1).toBeCloseTo(weaver.crimp, 3);
  expect(weaver.crimp).toBeGreaterThan(0);
  expect(weaver.crimp).toBeLessThan(0.03);
});

test('a start-stop row takes its girth and about 4 in', () => {
  // “Harvest Napkin Basket in Square” (thebasketsampler.com): about 35 in a row at 28 in round;
  // rule: girth + 4 in (countryseat.blogspot.com, 2010-05)
  for (const { piece, weave, stock } of weaverNeeds(settleBasket(planSchema.parse(napkin)))) {
    expect(weave).toBe('rounds');
    expect(piece, stock.section).toBeGreaterThanOrEqual(inches(31.5));
    expect(piece, stock.section).toBeLessThanOrEqual(inches(35));
  }
});

function woven(weave: Weave): WeaverNeed {
  const one: Plan = { ...plan, bands: plan.bands.map((band) => ({ ...band, weave })) };
  return weaverNeeds({ ...basket, plan: one })[0] as WeaverNeed;
}

test('two twined strands take twice the way, a twill half of the crimp, chasers two of everything', () => {
  const [twined, twill, chased] = [woven('twined'), woven('twill'), woven('chased')];
  expect(twined.length / weaver.length).toBeGreaterThan(1.95);
  expect(twined.strands % 2).toBe(0);
  expect(twill.crimp / weaver.crimp).toBeCloseTo(0.5, 6);
  // each of them climbs two rows in a turn, which is a hair longer
  expect(chased.crimp).toBeCloseTo(weaver.crimp, 4);
  expect(chased.strands).toBeGreaterThanOrEqual(weaver.strands);
});

test('bands that go on from one another are thinned once at the start and once at the end', () => {
  const bands = weaverNeeds(settleBasket(demos[0].plan));
  expect(bands.map(({ startTaper, endTaper }) => [startTaper !== null, endTaper !== null])).toEqual(
    [
      [true, false],
      [false, false],
      [false, true],
    ],
  );
});
