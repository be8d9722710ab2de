import { expect, test } from 'vitest';
import { quantities } from '../../../src/model/quantity/quantities.ts';
import { shoppingList } from '../../../src/model/quantity/shopping.ts';
import { yieldOf } from '../../../src/model/quantity/yields.ts';
import { settleBasket } from '../../../src/model/settleBasket.ts';
import { demos } from '../../../src/plan/demo/demos.ts';

const needs = quantities(settleBasket(demos[0].plan));
const stock = (width: number, thickness = 1.2) =>
  ({ section: 'flat', width, thickness, colour: 'natural' }) as const;

test('a pound of 1/2 in flat is 185 ft, as published', () => {
  // countryseat.blogspot.com, How much reed is needed, 2010-05
  const { lengthPerGram, source } = yieldOf(stock(12.7));
  expect((lengthPerGram * 453.59237) / 304.8).toBeCloseTo(185, 6);
  expect(source).toBe('published');
});

test('a size that is not listed, or is thicker than usual, is computed from its section', () => {
  expect(yieldOf(stock(30)).source).toBe('computed');
  expect(yieldOf(stock(12.7, 3)).source).toBe('computed');
  // 0.52 g/cm³: 30 × 1.2 mm weigh 18.72 g a metre
  expect(1000 / yieldOf(stock(30)).lengthPerGram).toBeCloseTo(18.72, 9);
});

test('five stakes of 20 in and seven of 18 in are about 19 ft of strand', () => {
  // the supplier’s own example, same source
  expect((5 * 20 + 7 * 18) / 12).toBeCloseTo(18.8, 1);
  const stakes = needs.materials.find(({ uses }) => uses.includes('stakes'));
  const summed = needs.stakes.reduce((sum, { count, length }) => sum + count * length, 0);
  expect(stakes?.length).toBeCloseTo(summed, 9);
});

test('a class has one list, each size rounded up once', () => {
  const one = shoppingList(needs, 1, 0.1, 'in');
  const class8 = shoppingList(needs, 8, 0.1, 'in');
  expect(class8).toHaveLength(one.length);
  class8.forEach(({ length, buy, perUnit, left, material }, at) => {
    expect(length).toBeCloseTo(8 * (one[at]?.length ?? 0), 6);
    expect(length).toBeCloseTo(8 * 1.1 * material.length, 6);
    expect(buy * perUnit).toBeGreaterThanOrEqual(length);
    expect((buy - 1) * perUnit).toBeLessThan(length);
    expect(left).toBeCloseTo(buy * perUnit - length, 6);
    expect(buy).toBeLessThanOrEqual(8 * (one[at]?.buy ?? 0));
  });
});

test('reed is bought by the pound in inches and by 500 g elsewhere', () => {
  expect(shoppingList(needs, 1, 0, 'in')[0]?.unit).toBe('1 lb coil');
  expect(shoppingList(needs, 1, 0, 'cm')[0]?.unit).toBe('500 g bundle');
});

test('every strand of the basket is weighed once', () => {
  const grams = needs.materials.reduce((sum, material) => sum + material.grams, 0);
  expect(needs.grams).toBeCloseTo(grams, 9);
  expect(new Set(needs.materials.map(({ stock: one }) => JSON.stringify(one))).size).toBe(
    needs.materials.length,
  );
});

test('half a basket is no class', () => {
  expect(() => shoppingList(needs, 0.5, 0.1, 'in')).toThrow(/baskets is 0.5/);
});
