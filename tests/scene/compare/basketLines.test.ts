import { Vector3 } from 'three';
import { expect, test } from 'vitest';
import { basketLines } from '../../../src/scene/compare/basketLines.ts';
import { moveGaze, newGaze } from '../../../src/scene/compare/gaze.ts';
import { sideLook } from '../../../src/scene/compare/sideLook.ts';
import { basketOf, trug } from '../../model/compare/baskets.ts';

const basket = basketOf(trug);
const { ends, rows } = basket.net;

test('the marks are three closed lines: base edge, widest row and rim', () => {
  const loops = [0, basket.summary.belly.row, rows.length - 1].map(
    (row) => rows[row]?.nodes.length,
  );
  const nodes = loops.reduce<number>((sum, count) => sum + (count ?? 0), 0);
  expect(basketLines(basket, 'marks')).toHaveLength(nodes * 6);
});

test('an outline has every end and about ten rows, all of real numbers', () => {
  const [some, all] = [basketLines(basket, 'rows'), basketLines(basket, 'ends')];
  expect(some.length / (ends.length * 6)).toBeGreaterThanOrEqual(8);
  expect(some.length / (ends.length * 6)).toBeLessThanOrEqual(12);
  expect(all).toHaveLength(ends.length * (rows.length - 1) * 6);
  expect([...some, ...all].every(Number.isFinite)).toBe(true);
});

test('the rim’s line lies outside its nodes and at their height, in centimetres', () => {
  const rim = basketLines(basket, 'marks').slice(-ends.length * 6);
  const height = basket.summary.height / 10;
  for (let at = 0; at < rim.length; at += 3) {
    expect(Math.abs((rim[at + 1] ?? 0) - height)).toBeLessThan(1);
  }
});

test('who moves a gaze is not told of it, the others are', () => {
  const gaze = newGaze();
  const told: string[] = [];
  const [left, right] = [() => void told.push('left'), () => void told.push('right')];
  gaze.followers.add(left).add(right);
  moveGaze(gaze, new Vector3(1, 2, 3), new Vector3(0, 1, 0), left);
  expect(told).toEqual(['right']);
  expect(gaze.position.toArray()).toEqual([1, 2, 3]);
});

test('each of the two is told apart by its line as well as by its colour', () => {
  for (const { a, b } of Object.values(sideLook)) {
    expect(a.colour).not.toBe(b.colour);
    expect([a.dash === null, b.dash === null]).toEqual([true, false]);
  }
});
