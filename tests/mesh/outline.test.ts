import { expect, test } from 'vitest';
import { outline } from '../../src/mesh/outline.ts';
import { settleBasket } from '../../src/model/settleBasket.ts';
import { demos } from '../../src/plan/demo/demos.ts';
import { demoPlan, startBasket } from './demoBasket.ts';

const basket = startBasket(demoPlan());
const side = outline(basket, 'side');
const end = outline(basket, 'end');

test('an outline has the base edge and every row, and the stakes of its near half', () => {
  expect(side.rows.map(({ row }) => row)).toEqual(Array.from({ length: 33 }, (_, row) => row));
  expect(side.stakes.length).toBeGreaterThan(8);
  expect(side.stakes.length).toBeLessThan(20);
});

test('rows run from left to right', () => {
  for (const view of [side, end]) {
    for (const { line } of view.rows) expect(line.at(-2) ?? 0).toBeGreaterThan(line[0] ?? 0);
  }
});

test('the silhouette holds every row and stake line', () => {
  for (const view of [side, end]) {
    for (const { line } of [...view.rows, ...view.stakes]) {
      line.forEach((value, at) => {
        expect(value).toBeGreaterThanOrEqual((at % 2 ? view.bottom : view.left) - 0.5);
        expect(value).toBeLessThanOrEqual((at % 2 ? view.top : view.right) + 0.5);
      });
    }
  }
});

test('the near half of a side view is the south of the basket', () => {
  const south = basket.net.ends.findIndex((one) => one.side === 'south' && !one.corner);
  const north = basket.net.ends.findIndex((one) => one.side === 'north' && !one.corner);
  const seen = side.stakes.map(({ end: number }) => number);
  expect(seen).toContain(south);
  expect(seen).not.toContain(north);
});

test('an oblong basket is longer from the side than from the end, and as high', () => {
  expect(side.width).toBeGreaterThan(end.width);
  expect(side.height).toBeCloseTo(end.height, 0);
});

test('an outline of a basket twice the size is twice the size, but for the strands', () => {
  const big = startBasket(demoPlan(), 2);
  const rows = big.net.rows.map((row) => ({ ...row, pitch: 2 * row.pitch }));
  const twice = outline({ ...big, net: { ...big.net, rows } }, 'side');
  expect(twice.height / side.height).toBeCloseTo(2, 2);
});

test('every number of an outline is finite', () => {
  const lines = [side.silhouette, side.table, ...side.rows.map(({ line }) => line)];
  expect(lines.flat().every(Number.isFinite)).toBe(true);
});

test.each(demos)('the outlines of the $title are as high as its wall', ({ plan }) => {
  const settled = settleBasket(plan);
  for (const view of ['side', 'end'] as const) {
    const { top, wall } = outline(settled, view);
    expect(wall).toBeCloseTo(settled.summary.height, 9);
    expect(Math.abs(top - wall)).toBeLessThan(0.15);
  }
});
