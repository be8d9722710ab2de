import { expect, test } from 'vitest';
import {
  chartFrame,
  girthAt,
  girthPath,
  isOnLine,
  rowAt,
  xOf,
  yOf,
} from '../../src/charts/chartFrame.ts';

const frame = chartFrame(360, 400, 32, [530, 600, 510]);

test('the base lies at the bottom and the last row at the top', () => {
  expect(yOf(frame, 0)).toBe(frame.bottom);
  expect(yOf(frame, 32)).toBe(frame.top);
});

test('a greater girth lies farther to the right', () => {
  expect(xOf(frame, 600)).toBeGreaterThan(xOf(frame, 599));
});

test('all girths lie inside the plot, with room to drag the widest outward', () => {
  expect(xOf(frame, 510)).toBeGreaterThan(frame.left);
  expect(frame.right - xOf(frame, 600)).toBeGreaterThan(90);
});

test('reading a girth back from its x gives the girth', () => {
  for (const girth of [505, 530.25, 600])
    expect(girthAt(frame, xOf(frame, girth))).toBeCloseTo(girth, 9);
});

test('a place between two rows is read as the nearer row, and never beyond the ends', () => {
  expect(rowAt(frame, yOf(frame, 17.4))).toBe(17);
  expect(rowAt(frame, frame.bottom + 50)).toBe(0);
  expect(rowAt(frame, -50)).toBe(32);
});

test('a straight line does not fill the whole width', () => {
  const straight = chartFrame(360, 400, 10, [500, 500, 500]);
  expect(straight.most - straight.least).toBeGreaterThan(50);
});

test('a frame of no size, no rows and no girths is still a frame', () => {
  const empty = chartFrame(0, 0, 0, []);
  expect(Object.values(empty).every(Number.isFinite)).toBe(true);
  expect(empty.right).toBeGreaterThan(empty.left);
  expect(empty.bottom).toBeGreaterThan(empty.top);
});

test('a girth that is not finite breaks the line and puts no NaN in it', () => {
  const path = girthPath(frame, [520, Number.NaN, 530, 540], 1);
  expect(path).not.toContain('NaN');
  expect(path.match(/M/g)).toHaveLength(2);
});

test('a press close to the line is on it, one farther off is not', () => {
  const pixel = (frame.most - frame.least) / (frame.right - frame.left);
  expect(isOnLine(frame, 600 + 8 * pixel, 600)).toBe(true);
  expect(isOnLine(frame, 600 + 20 * pixel, 600)).toBe(false);
});
