import { describe, expect, test } from 'vitest';
import { smoothLength } from '../../../src/model/net/smoothLength.ts';

type Curve = (t: number) => readonly [x: number, y: number];

/** `count` points evenly along the closed curve, by arc length, as x, y, z. */
function along(curve: Curve, count: number): number[] {
  const fine = 20_000;
  const at = Array.from({ length: fine + 1 }, (_, i) => curve(i / fine));
  const arc = [0];
  at.slice(1).forEach(([x, y], i) => {
    const [u, v] = at[i] ?? [x, y];
    arc.push((arc[i] ?? 0) + Math.hypot(x - u, y - v));
  });
  const whole = arc.at(-1) ?? 0;
  let i = 0;
  return Array.from({ length: count }, (_, n) => {
    const goal = (whole * n) / count;
    while ((arc[i + 1] ?? whole) < goal) i++;
    const [from = 0, to = 1] = [arc[i], arc[i + 1]];
    return [...curve((i + (goal - from) / (to - from)) / fine), 0];
  }).flat();
}

function chords(points: readonly number[]): number[] {
  const count = points.length / 3;
  const at = (node: number, d: number) => points[3 * (node % count) + d] ?? 0;
  return Array.from({ length: count }, (_, j) =>
    Math.hypot(at(j + 1, 0) - at(j, 0), at(j + 1, 1) - at(j, 1), at(j + 1, 2) - at(j, 2)),
  );
}

const even = (count: number) => Array<number>(count).fill(1);

const ellipse =
  (a: number, b: number): Curve =>
  (t) => [a * Math.cos(2 * Math.PI * t), b * Math.sin(2 * Math.PI * t)];

/** A quarter of an outline mirrored to all four, `quarter` running from (a, 0) to (0, b). */
function fourfold(quarter: Curve): Curve {
  return (t) => {
    const part = Math.min(3, Math.floor(4 * t));
    const s = 4 * t - part;
    const [x, y] = quarter(part % 2 === 0 ? s : 1 - s);
    return [part === 0 || part === 3 ? x : -x, part < 2 ? y : -y];
  };
}

function roundedRectangle(width: number, height: number, q: number): Curve {
  const [flat, upright, bend] = [width / 2 - q, height / 2 - q, (Math.PI / 2) * q];
  return fourfold((s) => {
    const at = s * (flat + upright + bend);
    if (at < upright) return [width / 2, at];
    if (at > upright + bend) return [flat - (at - upright - bend), height / 2];
    const angle = (at - upright) / q;
    return [flat + q * Math.cos(angle), upright + q * Math.sin(angle)];
  });
}

const superellipse = (a: number, b: number, n: number) =>
  fourfold((s) => {
    const [cos, sin] = [Math.cos((s * Math.PI) / 2), Math.sin((s * Math.PI) / 2)];
    return [a * Math.max(0, cos) ** (2 / n), b * Math.max(0, sin) ** (2 / n)];
  });

describe('the smooth length of a circle', () => {
  const offBy = (count: number) => {
    const points = along(ellipse(100, 100), count);
    const polygon = chords(points).reduce((sum, c) => sum + c, 0);
    return {
      smooth: smoothLength(points, even(count)) / (200 * Math.PI) - 1,
      polygon: polygon / (200 * Math.PI) - 1,
    };
  };

  // Source: `geometry.md` 1.0.
  test.each([
    [8, -2.5504642e-2],
    [30, -1.8267026e-3],
    [48, -7.1379418e-4],
  ])('of %i ends is 2πR where the polygon is short by %f', (count, short) => {
    const { smooth, polygon } = offBy(count);
    expect(polygon).toBeCloseTo(short, 6);
    expect(Math.abs(smooth)).toBeLessThan(0.25 * (Math.PI / count) ** 4);
  });

  test('is off by less than 0.003 % at 30 ends', () => {
    expect(Math.abs(offBy(30).smooth)).toBeLessThan(3e-5);
  });

  test('is nearer by 2⁴ with twice as many ends', () => {
    expect(offBy(30).smooth / offBy(60).smooth).toBeCloseTo(16, 0);
  });
});

/**
 * Sources: complete elliptic integral E(m), Abramowitz & Stegun table 17.1, perimeter 4a·E(m);
 * rounded rectangle 2(w + h) − (8 − 2π)q; superellipse by quadrature, `geometry.md` 1.7 … 1.9.
 */
const outlines: readonly (readonly [string, Curve, number])[] = [
  ['an ellipse of m = 0.5', ellipse(100, 100 * Math.sqrt(0.5)), 400 * 1.350643881],
  ['an ellipse of m = 0.75', ellipse(100, 50), 484.42241102738],
  ['an ellipse of m = 0.9', ellipse(100, 100 * Math.sqrt(0.1)), 400 * 1.104774733],
  ['an ellipse of axes 1 : 0.8', ellipse(100, 80), 567.23335777949],
  ['a rounded rectangle with q = 50', roundedRectangle(300, 200, 50), 914.159265359],
  ['a stadium', roundedRectangle(300, 200, 100), 828.318530718],
  ['a superellipse of n = 2.5', superellipse(100, 100, 2.5), 654.670472296],
];

describe('the smooth length comes to the true perimeter as the ends grow in number', () => {
  test.each(outlines)('of %s', (_, curve, perimeter) => {
    const errors = [24, 48, 96].map((count) =>
      Math.abs(smoothLength(along(curve, count), even(count)) / perimeter - 1),
    );
    expect(errors[1]).toBeLessThan(5e-4);
    expect(errors[2]).toBeLessThan(1e-4);
    expect(errors[2]).toBeLessThan((errors[0] ?? 0) / 3);
    // The polygon alone is never nearer.
    const points = along(curve, 96);
    const polygon = chords(points).reduce((sum, c) => sum + c, 0) / perimeter - 1;
    expect(errors[2]).toBeLessThan(Math.abs(polygon) / 4);
  });
});

test('unevenly spaced ends on a circle give its circumference as well', () => {
  const count = 40;
  const angles = even(count).map((_, i) => (2 * Math.PI * (i + 0.25 * Math.sin(i))) / count);
  const points = angles.flatMap((a) => [100 * Math.cos(a), 100 * Math.sin(a), 0]);
  expect(smoothLength(points, chords(points)) / (200 * Math.PI)).toBeCloseTo(1, 4);
});

test('a row turned and moved in space is as long as before', () => {
  const points = along(ellipse(100, 60), 40);
  const [cos, sin] = [Math.cos(0.8), Math.sin(0.8)];
  const turned = points.map((value, i) => {
    const [x = 0, y = 0] = points.slice(i - (i % 3), i - (i % 3) + 2);
    return [7 + x * cos, y, -2 + x * sin][i % 3] ?? value;
  });
  expect(smoothLength(turned, even(40))).toBeCloseTo(smoothLength(points, even(40)), 9);
});

test('a row twice the size is twice as long', () => {
  const points = along(superellipse(100, 60, 3), 36);
  const double = points.map((value) => 2 * value);
  expect(smoothLength(double, even(36))).toBeCloseTo(2 * smoothLength(points, even(36)), 9);
});
