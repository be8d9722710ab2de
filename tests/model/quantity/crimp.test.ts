import { expect, test } from 'vitest';
import { helixCrimp, peirceCrimp } from '../../../src/model/quantity/crimp.ts';

test('crimp is Peirce’s, as computed to 10 digits with mpmath', () => {
  // c = x·asin x + √(1 − x²) − 1 (F. T. Peirce, J. Text. Inst. 28 (1937) T45), D/p = 0.1 … 0.5
  expect(peirceCrimp(0.1)).toBeCloseTo(0.005004179223, 11);
  expect(peirceCrimp(0.2)).toBeCloseTo(0.02006748127, 10);
  expect(peirceCrimp(0.3)).toBeCloseTo(0.04534699762, 10);
  expect(peirceCrimp(0.4)).toBeCloseTo(0.08112187742, 10);
  expect(peirceCrimp(0.5)).toBeCloseTo(0.1278247916, 10);
});

test('no weaver goes denser than jammed stakes, and none is shorter than its way', () => {
  expect(peirceCrimp(0)).toBe(0);
  expect(peirceCrimp(3)).toBe(peirceCrimp(1));
  expect(() => peirceCrimp(Number.NaN)).toThrow(/x is NaN/);
});

test('a twined strand is a helix: its length is the hypotenuse of turn and pitch', () => {
  // flattened out, one turn of radius ρ over λ = 2 spacings: √(λ² + (2πρ)²)/λ
  const [stake, weaver, spacing] = [1.2, 2, 25];
  const radius = Math.sqrt((((stake + weaver) / 2) ** 2 + (weaver / 2) ** 2) / 2);
  const turn = Math.hypot(2 * spacing, 2 * Math.PI * radius) / (2 * spacing);
  expect(helixCrimp(stake, weaver, spacing)).toBeCloseTo(turn - 1, 12);
});
