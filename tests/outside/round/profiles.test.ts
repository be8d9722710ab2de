/** Profiles that the rows only approach: the finer the pitch, the nearer. */
import { expect, test } from 'vitest';
import { settledRings } from './roundBasket.ts';

/**
 * Worst error in height over the arc lengths from `from` to `to`, as a share of `size`.
 *
 * @param radius and `height` by arc length along the meridian
 */
function worst({ radius, height, from, to, size, set = 0.5 }: Profile, rows: number): number {
  const pitch = (to - from) / rows;
  const arc = (row: number) => from + pitch * (row - 0.5);
  const girth = (row: number) => 2 * Math.PI * radius(arc(row));
  const found = settledRings({ diameter: 2 * radius(from), rows, pitch, girth, set, ends: 24 });
  const errors = found
    .slice(1)
    .map((ring, index) => Math.abs(ring.height - (height(arc(index + 1)) - height(from))));
  return Math.max(...errors) / size;
}

interface Profile {
  readonly radius: (s: number) => number;
  readonly height: (s: number) => number;
  readonly from: number;
  readonly to: number;
  readonly size: number;
  /** Stake set; a belly presses its rows, and they stand where the stakes are shaped beforehand. */
  readonly set?: number;
}

function expectToConverge(profile: Profile, within: number): void {
  const [coarse, middle, fine] = [10, 20, 40].map((rows) => worst(profile, rows));
  expect(middle).toBeLessThan(0.5 * (coarse ?? 0));
  expect(fine).toBeLessThan(0.5 * (middle ?? 0));
  expect(fine).toBeLessThan(within);
}

test('girths 2π√(c² + s²) are a catenoid, z = c·asinh(s/c), the nearer the finer the rows', () => {
  // Euler 1744; geometry.md 1.1: c = 100, s = 100 has r = 141.421, z = 88.137.
  const radius = (s: number) => Math.hypot(100, s);
  const height = (s: number) => 100 * Math.asinh(s / 100);
  expect([radius(100), height(100)].map((value) => value.toFixed(3))).toEqual([
    '141.421',
    '88.137',
  ]);
  expectToConverge({ radius, height, from: 0, to: 100, size: 100 }, 1e-3);
});

test('girths 2πa·exp(−s/a) are a pseudosphere, the nearer the finer the rows', () => {
  // Beltrami 1868; geometry.md 1.1: a = 100, s = 100 has r = 36.788, axial z = 72.758.
  const radius = (s: number) => 100 * Math.exp(-s / 100);
  const height = (s: number) => {
    const u = Math.exp(-s / 100);
    return 100 * (Math.acosh(1 / u) - Math.sqrt(1 - u * u));
  };
  expect([radius(100), height(100)].map((value) => value.toFixed(3))).toEqual(['36.788', '72.758']);
  expectToConverge({ radius, height, from: 25, to: 100, size: 100 }, 1e-3);
});

/**
 * The Mylar balloon of radius 1, W. Paulsen, Amer. Math. Monthly 101 (1994) 953: along the meridian
 * ds = dx/√(1 − x⁴) and dz = x²·ds, from pole to equator. Table of x, z, s in geometry.md 1.2.
 */
const balloon = (() => {
  const steps = 4000;
  const half = 1.31102877714606;
  const x = [0];
  const z = [0];
  const slope = (value: number) => Math.sqrt(Math.max(0, 1 - value ** 4));
  // x″ = −2x³, so that the equator is passed without a square root that vanishes there.
  let [place, speed] = [0, slope(0)];
  const h = (2 * half) / steps;
  for (let i = 0; i < steps; i++) {
    const middle = speed - h * place ** 3;
    const next = place + h * middle;
    z.push((z[i] ?? 0) + (h * (place * place + next * next)) / 2);
    speed = middle - h * next ** 3;
    place = next;
    x.push(place);
  }
  const at = (values: readonly number[], s: number) => {
    const i = Math.min(steps - 1, Math.floor(s / h));
    const [low = 0, high = 0] = [values[i], values[i + 1]];
    return low + (high - low) * (s / h - i);
  };
  return { half, x: (s: number) => at(x, s), z: (s: number) => at(z, s) };
})();

const published = { x: 0.3, z: 0.590054435248, s: 0.300243823978, pole: 0.599070117368 };

test('the Mylar balloon of these checks is the published one', () => {
  const { half, x, z } = balloon;
  expect(x(published.s)).toBeCloseTo(published.x, 6);
  expect(z(half) - z(published.s)).toBeCloseTo(published.z, 5);
  expect(z(half)).toBeCloseTo(published.pole, 5);
});

test('girths of a Mylar balloon give its profile, the nearer the finer the rows', () => {
  const r = 150;
  const radius = (s: number) => r * balloon.x(s / r);
  const height = (s: number) => r * balloon.z(s / r);
  const from = r * published.s;
  const to = r * (2 * balloon.half - published.s);
  expectToConverge({ radius, height, from, to, size: r, set: 0.9 }, 2e-3);
});

test('a Mylar balloon is 1.19814 times as thick as its radius', () => {
  const r = 150;
  const rows = 61;
  const from = published.s * r;
  const to = (2 * balloon.half - published.s) * r;
  const pitch = (to - from) / rows;
  const girth = (row: number) => 2 * Math.PI * r * balloon.x((from + pitch * (row - 0.5)) / r);
  const found = settledRings({ diameter: 2 * r * published.x, rows, pitch, girth, set: 0.9 });
  // Row 31 is the equator; the caps that were left out have their published height.
  const half = (found[31]?.height ?? 0) + r * (published.pole - published.z);
  expect(2 * half).toBeGreaterThan(1.19814 * r * 0.997);
  expect(2 * half).toBeLessThan(1.19814 * r * 1.003);
});
