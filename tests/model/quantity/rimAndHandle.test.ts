import { expect, test } from 'vitest';
import { archLength } from '../../../src/model/quantity/arch.ts';
import { handleNeed, wrapNeed } from '../../../src/model/quantity/handleParts.ts';
import { lasherLength } from '../../../src/model/quantity/lasher.ts';
import { rimNeed } from '../../../src/model/quantity/rimParts.ts';
import { settleBasket } from '../../../src/model/settleBasket.ts';
import { demos } from '../../../src/plan/demo/demos.ts';
import { inches } from './inches.ts';

const basket = settleBasket(demos[0].plan);
const rim = rimNeed(basket);
const needed = (name: string) => rim.parts.find(({ part }) => part === name)?.needed ?? 0;

test('the inside hoop is about 2 in shorter than the outside one', () => {
  // basketmakerscatalog.com, How to scarf rims
  const shorter = needed('outside hoop') - needed('inside hoop');
  expect(shorter).toBeGreaterThan(inches(1.5));
  expect(shorter).toBeLessThan(inches(2.5));
});

test('the outside hoop is the rim’s girth and 4–5 in with a lap of 4 in', () => {
  // same source
  const { plan, rows } = basket;
  const lapped = { ...basket, plan: { ...plan, rim: { ...plan.rim, lap: inches(4) } } };
  const over = (rimNeed(lapped).parts[0]?.needed ?? 0) - (rows.at(-1)?.tapeGirth ?? 0);
  expect(over).toBeGreaterThan(inches(4));
  expect(over).toBeLessThan(inches(5));
});

test('the rim’s lap is thinned over 3 in, or less where the lap is less', () => {
  // common practice, no source
  expect(rim.thinned).toBe(76.2);
  const { plan } = basket;
  const short = { ...basket, plan: { ...plan, rim: { ...plan.rim, lap: 50 } } };
  expect(rimNeed(short).thinned).toBe(50);
});

test('a rim of 28 in with 28 gaps and a bundle of 2 1/2 in takes a lasher of 81–82 in', () => {
  // measured 82 in: prairiewoodbasketry.com, Determining lasher length, 2018
  const length = lasherLength(28, inches(28), inches(2.5)) / 25.4;
  expect(length).toBeGreaterThan(81);
  expect(length).toBeLessThan(82);
});

test('12 in of a bar 2 1/2 in round take 48 turns of 1/4 in strip, 121 in and tails', () => {
  // trade tables 2.10, computed
  const wrap = wrapNeed(inches(12), inches(2.5), inches(0.25));
  expect(wrap.turns).toBe(48);
  expect((wrap.length - inches(7)) / 25.4).toBeCloseTo(120.6, 1);
});

test('the wrap lies edge to edge over all of the bow, with no turn too many', () => {
  const { covered = Number.NaN, turns = Number.NaN } = handleNeed(basket).wrap ?? {};
  const { handle } = basket.plan;
  const width = handle.kind === 'none' ? Number.NaN : handle.wrap.width;
  expect(turns * width).toBeGreaterThanOrEqual(covered);
  expect((turns - 1) * width).toBeLessThan(covered);
});

test('a bow is half a circle on legs, or half an ellipse', () => {
  expect(archLength(200, 100)).toBeCloseTo(Math.PI * 100, 9);
  expect(archLength(200, 150)).toBeCloseTo(Math.PI * 100 + 100, 9);
  // perimeter of an ellipse over its long half-axis, b/a = 0.5 and 0.2 (DLMF 19.30(i))
  expect(archLength(200, 50)).toBeCloseTo(4.8442241102738 * 50, 2);
  expect(archLength(200, 20)).toBeCloseTo(4.2020089079378 * 50, 1);
});

test('a basket without a handle takes none', () => {
  const { plan } = basket;
  const bare = { ...basket, plan: { ...plan, handle: { kind: 'none' } as const } };
  expect(handleNeed(bare)).toEqual({ parts: [], wrap: null, span: 0 });
});
