import { expect, test } from 'vitest';
import type { FlatFinish } from '../../src/mesh/flatFinish.ts';
import { flatFinish } from '../../src/mesh/flatFinish.ts';
import { flatStrip } from '../../src/mesh/flatStrip.ts';
import { outline } from '../../src/mesh/outline.ts';
import type { Basket } from '../../src/model/basket.ts';
import { settleBasket } from '../../src/model/settleBasket.ts';
import { demos } from '../../src/plan/demo/demos.ts';

const views = ['side', 'end'] as const;

function settled(id: string): Basket {
  const demo = demos.find((one) => one.id === id);
  if (!demo) throw new Error(`no demo "${id}"`);
  return settleBasket(demo.plan);
}

const trug = settled('orchard-trug');
const loaf = settled('loaf-basket');

/** Smallest and largest x of a line. */
function across(line: readonly number[]): readonly [number, number] {
  const x = line.filter((_, at) => at % 2 === 0);
  return [Math.min(...x), Math.max(...x)];
}

/** Twice the area inside a line, whichever way round. */
function area(line: readonly number[]): number {
  let sum = 0;
  for (let at = 0; at < line.length; at += 2) {
    const next = (at + 2) % line.length;
    sum += (line[at] ?? 0) * (line[next + 1] ?? 0) - (line[next] ?? 0) * (line[at + 1] ?? 0);
  }
  return Math.abs(sum) / 2;
}

test.each([
  ['a swinging handle', trug],
  ['a fixed handle', loaf],
])('%s stands as high over the rim as its plan says, from both sides', (_name, basket) => {
  const { handle } = basket.plan;
  if (handle.kind === 'none') throw new Error('a handle expected');
  for (const view of views) {
    const over = flatFinish(basket, view).top - outline(basket, view).top;
    expect(Math.abs(over - handle.rise)).toBeLessThan(handle.bow.thickness + 4);
  }
});

test('a bow is an arch from the one side and a post of its width from the other', () => {
  const posts = [
    [trug, 'side', 'end'],
    [loaf, 'side', 'end'],
  ] as const;
  for (const [basket, one, other] of posts) {
    const { handle } = basket.plan;
    if (handle.kind === 'none') throw new Error('a handle expected');
    const [bow, arch] = [one, other].map((view) => flatFinish(basket, view).handle.at(-1) ?? []);
    const widths = [bow, arch].map((line) => across(line ?? []));
    const [post = 0, span = 0] = widths.map(([left, right]) => right - left);
    const [narrow, wide] = [Math.min(post, span), Math.max(post, span)];
    expect(narrow).toBeLessThan(1.6 * handle.bow.width);
    expect(wide).toBeGreaterThan(5 * handle.bow.width);
    // an arch is mostly air
    const full = post > span ? bow : arch;
    expect(area(full ?? [])).toBeLessThan(0.5 * wide * handle.rise);
  }
});

test('a swinging handle has two ears, and a basket without a handle has none', () => {
  expect(flatFinish(trug, 'side').handle).toHaveLength(3);
  expect(flatFinish(loaf, 'side').handle).toHaveLength(1);
  const bare: FlatFinish = flatFinish(settled('russet-jar'), 'side');
  expect(bare.handle).toEqual([]);
});

test.each(views)('the hoop lies at the top of the wall and a little wider, from the %s', (view) => {
  for (const basket of [trug, loaf]) {
    const { hoop } = flatFinish(basket, view);
    const { rows, top } = outline(basket, view);
    const [left, right] = across(hoop);
    const [rimLeft, rimRight] = across(rows.at(-1)?.line ?? []);
    const { thickness, width } = basket.plan.rim.hoop;
    expect(rimLeft - left).toBeGreaterThan(thickness);
    expect(right - rimRight).toBeLessThan(thickness + 8);
    const heights = hoop.filter((_, at) => at % 2 === 1);
    expect(Math.max(...heights)).toBeGreaterThan(top);
    expect(Math.min(...heights)).toBeGreaterThan(top - width - 8);
  }
});

test('a straight strand seen from its face is a strip of its width', () => {
  const section = (y: number) => [-2, y, -2, y, 2, y, 2, y];
  expect(area(flatStrip([0, 5, 10].map(section)))).toBeCloseTo(40, 9);
});

test('a strand that goes from the eye and comes back is seen as one piece', () => {
  const section = (y: number) => [-2, y, -2, y, 2, y, 2, y];
  expect(area(flatStrip([0, 5, 10, 5, 0].map(section)))).toBeCloseTo(40, 9);
});
