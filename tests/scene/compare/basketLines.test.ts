import { Vector3 } from 'three';
import { expect, test } from 'vitest';
import { basketLines } from '../../../src/scene/compare/basketLines.ts';
import { moveGaze, newGaze } from '../../../src/scene/compare/gaze.ts';
import type { SideLook } from '../../../src/scene/compare/sideLook.ts';
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

test('an outline has about ten rows, all of real numbers', () => {
  const some = basketLines(basket, 'rows');
  expect(some.length / (ends.length * 6)).toBeGreaterThanOrEqual(8);
  expect(some.length / (ends.length * 6)).toBeLessThanOrEqual(12);
  expect(some.every(Number.isFinite)).toBe(true);
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

test('each of the two is told apart by its line as well as by its colour, and from the strands by its edge', () => {
  for (const { a, b } of Object.values(sideLook)) {
    expect(a.colour).not.toBe(b.colour);
    expect([a.dash === null, b.dash === null]).toEqual([true, false]);
    expect(Math.min(contrast(a), contrast(b))).toBeGreaterThan(4.5);
  }
});

/** Contrast of a line with its edge, as WCAG 2.2 defines it. */
function contrast({ colour, edge }: SideLook): number {
  const [light = 0, dark = 0] = [luminance(colour), luminance(edge)].toSorted((a, b) => b - a);
  return (light + 0.05) / (dark + 0.05);
}

function luminance(colour: string): number {
  const parts = [1, 3, 5].map((at) => Number.parseInt(colour.slice(at, at + 2), 16) / 255);
  const linear = parts.map((one) =>
    one <= 0.04045 ? one / 12.92 : ((one + 0.055) / 1.055) ** 2.4,
  );
  const [red = 0, green = 0, blue = 0] = linear;
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}
