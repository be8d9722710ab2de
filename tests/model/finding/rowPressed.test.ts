import { expect, test } from 'vitest';
import { rowPressed } from '../../../src/model/finding/rowPressed.ts';
import { netOf, readingOf, squarePlan } from '../readings.ts';

const plan = squarePlan();
const net = netOf(plan);

/**
 * Hoop force at which a ring of this weaver goes oval, 3·B/R² (Timoshenko & Gere): 5 mm wide and
 * 1.5 mm thick, so B/E = 5·1.5³/12 = 1.40625 mm⁴, at a girth of 400 mm.
 */
const limit = (3 * 1.40625) / (400 / (2 * Math.PI)) ** 2;

const pulled = (force: (row: number) => number) =>
  rowPressed(
    readingOf(plan, net.start, { rowTension: Float64Array.from(net.rows, (_, k) => force(k)) }),
  );

test('rows pressed together by more than rings of them bear are warned of', () => {
  const [finding, ...others] = pulled(() => -1.2 * limit);
  expect(others).toEqual([]);
  expect(finding).toMatchObject({ kind: 'row-pressed', severity: 'warn', limit: 1 });
  expect(finding?.rows).toHaveLength(20);
  expect(finding?.value).toBeCloseTo(1.2, 9);
});

test('rows pressed by less are passed over', () => {
  expect(pulled(() => -0.9 * limit)).toEqual([]);
});

test('rows that pull are passed over', () => {
  expect(pulled(() => 50 * limit)).toEqual([]);
});

test('one row that is pressed between two that pull cannot go oval alone', () => {
  expect(pulled((row) => (row % 2 === 0 ? -10 : 11) * limit)).toEqual([]);
});

test('the base holds the row that lies against it', () => {
  expect(pulled((row) => (row === 1 ? -40 * limit : 0))).toEqual([]);
});
