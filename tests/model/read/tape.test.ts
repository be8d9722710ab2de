import fc from 'fast-check';
import { expect, test } from 'vitest';
import { hullShare } from '../../../src/model/read/loopHull.ts';
import { tapeGirth } from '../../../src/model/read/tape.ts';

type Point = readonly [x: number, y: number];

/** A closed loop in the plane z = 0, and its own length as a polygon. */
function loopOf(points: readonly Point[]) {
  const length = points.reduce((sum, [x, y], i) => {
    const [u, v] = points[(i + 1) % points.length] ?? [x, y];
    return sum + Math.hypot(u - x, v - y);
  }, 0);
  return { points: Float64Array.from(points.flatMap(([x, y]) => [x, y, 0])), length };
}

function round(count: number, at: (angle: number) => Point): Point[] {
  return Array.from({ length: count }, (_, i) => at((2 * Math.PI * i) / count));
}

/** Complete elliptic integral of the second kind by the AGM (Abramowitz & Stegun 17.6), m = e². */
function ellipticE(m: number): number {
  let [a, b, c, power] = [1, Math.sqrt(1 - m), Math.sqrt(m), 0.5];
  let sum = power * c * c;
  while (Math.abs(c) > 1e-16) {
    [a, b, c] = [(a + b) / 2, Math.sqrt(a * b), (a - b) / 2];
    power *= 2;
    sum += power * c * c;
  }
  return (Math.PI / (2 * a)) * (1 - sum);
}

/** Rounded rectangle, arcs of `steps` pieces each. */
function roundedRectangle(width: number, height: number, radius: number, steps: number): Point[] {
  return [0, 1, 2, 3].flatMap((corner) =>
    Array.from({ length: steps + 1 }, (_, i): Point => {
      const angle = (Math.PI / 2) * (corner + i / steps);
      const x = (corner === 0 || corner === 3 ? 1 : -1) * (width / 2 - radius);
      const y = (corner < 2 ? 1 : -1) * (height / 2 - radius);
      return [x + radius * Math.cos(angle), y + radius * Math.sin(angle)];
    }),
  );
}

test('the AGM gives E(0.5) and E(0.9) of Abramowitz & Stegun table 17.1', () => {
  expect(ellipticE(0.5)).toBeCloseTo(1.350643881, 9);
  expect(ellipticE(0.9)).toBeCloseTo(1.104774733, 9);
});

test('a tape round a circle reads 2π(r + t)', () => {
  const { points } = loopOf(round(180, (a) => [100 * Math.cos(a), 100 * Math.sin(a)]));
  expect(tapeGirth(points, 200 * Math.PI, 3)).toBeCloseTo(206 * Math.PI, 9);
});

test('a tape round a rounded rectangle reads that of the rectangle larger by t all round', () => {
  // Perimeter 2(w + h) − (8 − 2π)q; 300 × 200 with q = 50 is 914.1592653590 (reference 1.9).
  const { points } = loopOf(roundedRectangle(300, 200, 50, 40));
  const outer = 2 * (310 + 210) - (8 - 2 * Math.PI) * 55;
  expect(tapeGirth(points, 914.159265359, 5)).toBeCloseTo(outer, 8);
});

test('a tape round an ellipse reads its perimeter 4a·E(m) and 2πt', () => {
  const { points, length } = loopOf(round(720, (a) => [100 * Math.cos(a), 60 * Math.sin(a)]));
  const perimeter = 400 * ellipticE(1 - 0.36);
  // b/a = 0.6: P/a = 5.1053997726796 (reference 1.7, A&S 17.6).
  expect(perimeter).toBeCloseTo(510.53997726796, 8);
  expect(length).toBeCloseTo(perimeter, 1);
  expect(tapeGirth(points, perimeter, 2)).toBeCloseTo(perimeter + 4 * Math.PI, 9);
});

test('the circle of the same girth and thickness reads the same on the tape as an oblong (Steiner)', () => {
  const oblong = loopOf(roundedRectangle(300, 200, 50, 40));
  const circle = loopOf(round(200, (a) => [Math.cos(a), Math.sin(a)]));
  expect(tapeGirth(oblong.points, 900, 4)).toBeCloseTo(tapeGirth(circle.points, 900, 4), 9);
});

test('a tape bridges a hollow', () => {
  const { points, length } = loopOf([
    [0, 0],
    [10, 0],
    [10, 10],
    [5, 3],
    [0, 10],
  ]);
  expect(tapeGirth(points, length, 0)).toBeCloseTo(40, 9);
});

test('a loop on a slope reads the same as a level one', () => {
  const level = loopOf([
    [0, 0],
    [10, 0],
    [10, 10],
    [5, 3],
    [0, 10],
  ]);
  const [cos, sin] = [Math.cos(0.7), Math.sin(0.7)];
  const sloping = level.points.map((value, i) => {
    if (i % 3 === 0) return value * cos;
    return i % 3 === 1 ? value : (level.points[i - 2] ?? 0) * sin;
  });
  expect(tapeGirth(sloping, level.length, 1)).toBeCloseTo(
    tapeGirth(level.points, level.length, 1),
    9,
  );
});

test('the hull of any star-shaped loop is what gift wrapping finds', () => {
  const radii = fc.array(fc.double({ min: 20, max: 100, noNaN: true }), {
    minLength: 3,
    maxLength: 60,
  });
  fc.assert(
    fc.property(radii, fc.boolean(), (lengths, backwards) => {
      const points = lengths.map((r, i): Point => {
        const angle = (2 * Math.PI * i) / lengths.length;
        return [r * Math.cos(angle), r * Math.sin(angle)];
      });
      if (backwards) points.reverse();
      const flat = Float64Array.from(points.flat());
      expect(hullShare(flat) * loopOf(points).length).toBeCloseTo(wrapped(points), 8);
    }),
  );
});

/** Perimeter of the convex hull by gift wrapping (Jarvis 1973). */
function wrapped(points: readonly Point[]): number {
  const start = points.reduce((low, p) => (p[1] < low[1] ? p : low));
  let perimeter = 0;
  let here = start;
  do {
    let next = points.find((p) => p !== here) ?? here;
    for (const p of points) {
      const turn = (next[0] - here[0]) * (p[1] - here[1]) - (next[1] - here[1]) * (p[0] - here[0]);
      const farther =
        Math.hypot(p[0] - here[0], p[1] - here[1]) >
        Math.hypot(next[0] - here[0], next[1] - here[1]);
      if (p !== here && (turn < 0 || (turn === 0 && farther))) next = p;
    }
    perimeter += Math.hypot(next[0] - here[0], next[1] - here[1]);
    here = next;
  } while (here !== start);
  return perimeter;
}
