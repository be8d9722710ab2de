/**
 * Girths of surfaces of revolution give these surfaces. With r = G/2π and pitch p a row up the meridian,
 * dz = √(p² − dr²): school geometry (shared/design reference `geometry.md` 1.1, in docs/shaping-model.md).
 */
import { expect, test } from 'vitest';
import { settleBasket } from '../../../src/model/settleBasket.ts';
import { off, roundPlan, settledRings } from './roundBasket.ts';

const rows = 60;
const pitch = 4.4;

test('a constant girth on a wheel of 48 ends and 60 rows is a cylinder of radius G/2π', () => {
  const diameter = 200;
  const found = settledRings({ diameter, rows, pitch, girth: () => Math.PI * diameter });
  found.slice(1).forEach(({ radius, height, unround }, index) => {
    expect(off(radius, diameter / 2)).toBeLessThan(3e-3);
    expect(off(height, pitch * (index + 0.5))).toBeLessThan(3e-3);
    expect(unround).toBeLessThan(3e-3 * diameter);
  });
});

for (const sine of [0.25, -0.25, 0.5]) {
  const way = sine > 0 ? 'opens' : 'narrows';
  const half = (Math.asin(Math.abs(sine)) * 180) / Math.PI;
  test(`a girth that ${way} by ${Math.abs(sine)}·2πp a row is a cone of half angle ${half.toFixed(1)}°`, () => {
    const diameter = sine > 0 ? 160 : 320;
    const along = (row: number) => pitch * (row - 0.5);
    const girth = (row: number) => Math.PI * diameter + 2 * Math.PI * sine * along(row);
    const found = settledRings({ diameter, rows, pitch, girth });
    found.slice(1).forEach(({ radius, height }, index) => {
      expect(off(radius, diameter / 2 + sine * along(index + 1))).toBeLessThan(3e-3);
      expect(off(height, Math.sqrt(1 - sine * sine) * along(index + 1))).toBeLessThan(3e-3);
    });
  });
}

/** Sphere of radius ρ that stands on a flat disc: the meridian starts at arc length s0 from the pole. */
const rho = 120;
const foot = 50;
const s0 = rho * Math.asin(foot / rho);
const arc = (row: number) => s0 + pitch * (row - 0.5);
const sphere = {
  diameter: 2 * foot,
  rows,
  pitch,
  girth: (row: number) => 2 * Math.PI * rho * Math.sin(arc(row) / rho),
};

test('girths 2πρ·sin(s/ρ) are a sphere of radius ρ, row by row', () => {
  settledRings(sphere)
    .slice(1)
    .forEach(({ radius, height, unround }, index) => {
      const angle = arc(index + 1) / rho;
      expect(off(radius, rho * Math.sin(angle))).toBeLessThan(3e-3);
      const rise = rho * (Math.cos(s0 / rho) - Math.cos(angle));
      expect(Math.abs(height - rise)).toBeLessThan(3e-3 * rho);
      expect(unround).toBeLessThan(3e-3 * rho);
    });
});

test('a sphere has its belly at the equator, its height and its capacity', () => {
  const basket = settleBasket(roundPlan(sphere));
  const { belly, height, capacity } = basket.summary;
  const equator = Math.round(((Math.PI / 2) * rho - s0) / pitch + 0.5);
  const [half, base] = [0.5 + 1.5, 1];
  expect(Math.abs(belly.row - equator)).toBeLessThanOrEqual(1);
  expect(off(belly.tapeGirth, 2 * Math.PI * (rho + half))).toBeLessThan(3e-3);
  const z = (s: number) => -rho * Math.cos(s / rho);
  expect(off(height - base, z(s0 + rows * pitch) - z(s0))).toBeLessThan(3e-3);
  // Inside: the sphere half a wall smaller, from the base's upper face to the rim.
  const inner = rho - half;
  const volume = (at: number) => Math.PI * (inner * inner * at - at ** 3 / 3);
  const holds = volume(z(s0 + rows * pitch)) - volume(z(s0) + base);
  expect(off(capacity, holds)).toBeLessThan(3e-3);
});
