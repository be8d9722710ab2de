/** Laws that hold on a wheel base whatever the girths: total curvature, and every length doubled. */
import { expect, test } from 'vitest';
import { angleDeficits } from '../../../src/model/read/angleDeficit.ts';
import { settlePlan } from '../../../src/model/settle/settlePlan.ts';
import { settleBasket } from '../../../src/model/settleBasket.ts';
import type { RoundShape } from './roundBasket.ts';
import { off, roundPlan } from './roundBasket.ts';

/** Wall that leans out (or, below 0, in) by `lean` over a wheel 160 across. */
function cone(lean: number): RoundShape {
  const pitch = 4.4;
  const opens = 2 * Math.PI * pitch * Math.sin(lean);
  return {
    diameter: 160,
    rows: 16,
    pitch,
    girth: (row) => Math.PI * 160 + opens * (row - 0.5),
  };
}

/** Curvature inside the last row, and the turning of that row, radians. */
function curvature(shape: RoundShape) {
  const { work } = settlePlan(roundPlan(shape));
  const deficits = angleDeficits(work.net, work.x);
  const rim = new Set(work.net.rows.at(-1)?.nodes);
  const sum = (onRim: boolean) =>
    deficits.reduce((total, value, node) => total + (rim.has(node) === onRim ? value : 0), 0);
  return { inside: sum(false), turning: sum(true) };
}

for (const [lean, name] of [
  [0, 'upright'],
  [Math.PI / 6, 'flared by 30°'],
  [-Math.PI / 6, 'drawn in by 30°'],
] as const) {
  test(`the curvature of a wheel basket ${name} and the turning of its rim are 2π together`, () => {
    // Gauss 1827, Bonnet 1848; inside the rim 2π(1 − sin lean) (geometry.md 1.3).
    const { inside, turning } = curvature(cone(lean));
    expect(inside + turning).toBeCloseTo(2 * Math.PI, 9);
    expect(off(inside, 2 * Math.PI * (1 - Math.sin(lean)))).toBeLessThan(3e-3);
  });
}

test('a domed wheel of few spokes makes no difference to the total', () => {
  const domed = curvature({ ...cone(0.2), lift: 12, ends: 20 });
  expect(domed.inside + domed.turning).toBeCloseTo(2 * Math.PI, 9);
});

test('every length of a wheel basket doubled doubles its shape', () => {
  const bellied = (scale: number): RoundShape => ({
    diameter: 150 * scale,
    rows: 24,
    pitch: 5 * scale,
    girth: (row) => scale * (Math.PI * 150 + 90 * Math.sin((Math.PI * row) / 24)),
    scale,
    lift: 8 * scale,
    ends: 32,
  });
  const [once, twice] = [1, 2].map((scale) => settleBasket(roundPlan(bellied(scale))));
  const size = once?.summary.rim.length ?? 0;
  once?.positions.forEach((value, i) => {
    expect(Math.abs((twice?.positions[i] ?? Number.NaN) - 2 * value)).toBeLessThan(1e-4 * size);
  });
  expect(off(twice?.summary.capacity ?? 0, 8 * (once?.summary.capacity ?? 0))).toBeLessThan(1e-5);
});
