/** Sources: calculus of variations, `geometry.md` 1.4 of the reference the checks were planned from. */
import { expect, test } from 'vitest';
import { smoothLength } from '../../src/model/net/smoothLength.ts';
import { refresh } from '../../src/model/settle/newton.ts';
import { settle } from '../../src/model/settle/settle.ts';
import { work } from '../../src/model/settle/work.ts';
import { handNet, loop } from './handNet.ts';

const weaver = 2.5;
const girth = 600;

/** One row of `count` ends on the closed curve `at`, free in space: nothing but a weaver. */
function freeRow(
  count: number,
  length: number,
  at: (angle: number) => readonly [number, number, number],
) {
  const nodes = Array.from({ length: count }, (_, i) => i);
  const points = nodes.map((i) => at((2 * Math.PI * i) / count));
  const quarters = [0, 1, 2, 3].map((part) => Math.floor((part * count) / 4));
  return handNet({
    points,
    ring: nodes.map(() => 0),
    stakes: [],
    rows: [loop(nodes, length, 0, 0), loop(nodes, length, 5, weaver)],
    anchors: quarters,
  });
}

/** Length times the integral of squared curvature of the polygon through `x`, node by node. */
function lengthTimesBending(x: Float64Array): number {
  const count = x.length / 3;
  const edges = Array.from({ length: count }, (_, i) =>
    [0, 1, 2].map((d) => (x[3 * ((i + 1) % count) + d] ?? 0) - (x[3 * i + d] ?? 0)),
  );
  const chords = edges.map((edge) => Math.hypot(...edge));
  let bending = 0;
  edges.forEach((edge, i) => {
    const before = edges[(i + count - 1) % count] ?? edge;
    const [c, b] = [chords[i] ?? 1, chords[(i + count - 1) % count] ?? 1];
    const cosine = edge.reduce((sum, value, d) => sum + (value / c) * ((before[d] ?? 0) / b), 0);
    bending += Math.acos(Math.min(1, cosine)) ** 2 / ((b + c) / 2);
  });
  return bending * chords.reduce((sum, c) => sum + c, 0);
}

const oval = freeRow(40, girth, (a) => [110 * Math.cos(a), 70 * Math.sin(a), 4 * Math.sin(3 * a)]);

test('a free closed row settles from a wavy oval to a level circle', () => {
  const own = work(oval, 0, 'none');
  expect(settle(own).converged).toBe(true);
  const radius = girth / (2 * Math.PI);
  const middle = [0, 1, 2].map(
    (d) => own.x.reduce((sum, value, i) => sum + (i % 3 === d ? value : 0), 0) / 40,
  );
  for (let i = 0; i < own.x.length; i += 3) {
    const off = [0, 1, 2].map((d) => (own.x[i + d] ?? 0) - (middle[d] ?? 0));
    expect(Math.abs(Math.hypot(...off) / radius - 1)).toBeLessThan(1e-4);
  }
});

test('the settled circle has L·∮κ² = 4π², the least that a closed curve can have', () => {
  const own = work(oval, 0, 'none');
  const before = lengthTimesBending(own.x);
  settle(own);
  expect(before).toBeGreaterThan(1.1 * 4 * Math.PI ** 2);
  expect(lengthTimesBending(own.x)).toBeCloseTo(4 * Math.PI ** 2, 3);
});

/** Energy of a row out of round by `out`·cos(nθ), its ends still evenly spaced, as the model reckons it. */
function energyOf(radius: number, n: number, out: number) {
  const count = 600;
  const at = (a: number) => {
    const [outward, along] = [radius + out * Math.cos(n * a), (-out / n) * Math.sin(n * a)];
    const [cos, sin] = [Math.cos(a), Math.sin(a)];
    return [outward * cos - along * sin, outward * sin + along * cos, 0] as const;
  };
  const nodes = Array.from({ length: count }, (_, i) => i);
  const points = nodes.flatMap((i) => at((2 * Math.PI * i) / count));
  const length = smoothLength(
    points,
    nodes.map(() => 1),
  );
  const own = work(freeRow(count, length, at), 0, 'none');
  // Springs that hold the spacing are no part of bending.
  own.elements.spring.stiffness.fill(0);
  const energy = refresh(own, new Float64Array(own.lead.length), false);
  return { energy, round: (2 * Math.PI ** 2 * weaver) / length };
}

test('the energy of a round row is 2π²·B/L', () => {
  const { energy, round } = energyOf(80, 2, 0);
  expect(energy / round).toBeCloseTo(1, 4);
});

test.each([2, 3, 4, 6])(
  'a row out of round by a·cos(%iθ) stores (πBa²/2R³)(n² − 1)² beyond the circle of its length',
  (n) => {
    const [radius, out] = [80, 0.2];
    const oval = energyOf(radius, n, out);
    const expected = ((Math.PI * weaver * out ** 2) / (2 * radius ** 3)) * (n * n - 1) ** 2;
    // A polygon's energy is less than its curve's by a factor that the round row shows.
    const circle = energyOf(radius, n, 0);
    const factor = circle.energy / circle.round;
    expect((oval.energy - oval.round * factor) / expected).toBeCloseTo(1, 2);
  },
);
