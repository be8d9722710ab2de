import fc from 'fast-check';
import { expect, test } from 'vitest';
import { findings } from '../../../src/model/finding/findings.ts';
import { settleBasket } from '../../../src/model/settleBasket.ts';
import { baseLift } from '../../../src/plan/baseSize.ts';
import { demos } from '../../../src/plan/demo/demos.ts';
import type { Plan } from '../../../src/plan/schema.ts';
import { anyPlan, matOf } from '../../plan/plans.ts';
import { readingOf, squarePlan } from '../readings.ts';

/** The square plan with all its lengths `scale` times as large. */
function scaled(scale: number): Plan {
  const plan = squarePlan();
  const [band] = plan.bands;
  if (!band) throw new Error('no band');
  const strand = <S extends { width: number; thickness: number }>(own: S) => ({
    ...own,
    width: own.width * scale,
    thickness: own.thickness * scale,
  });
  return {
    ...plan,
    base: { ...matOf(plan), stake: strand(plan.base.stake), gap: 5 * scale },
    bands: [{ ...band, weaver: strand(band.weaver) }],
    girthLine: { points: [{ row: 20, girth: 400 * scale }], rows: {} },
    rim: { ...plan.rim, hoop: strand(plan.rim.hoop) },
    allowances: { ...plan.allowances, tuck: plan.allowances.tuck * scale },
  };
}

test('with every length doubled, every reading doubles, angles stay and the capacity is eightfold', () => {
  const one = readingOf(scaled(1));
  const two = readingOf(scaled(2));
  one.rows.forEach((row, index) => {
    const other = two.rows[index];
    for (const key of ['tapeGirth', 'length', 'width', 'heightSide', 'gapMost', 'wall'] as const) {
      expect((other?.[key] ?? 0) / row[key]).toBeCloseTo(2, 8);
    }
    expect(other?.lean).toBeCloseTo(row.lean, 7);
  });
  expect(two.summary.capacity / one.summary.capacity).toBeCloseTo(8, 8);
  expect(two.summary.height / one.summary.height).toBeCloseTo(2, 8);
  expect(two.summary.tipAngle).toBeCloseTo(one.summary.tipAngle, 6);
  expect(two.stakes[4]?.tightestBend).toBeCloseTo(2 * (one.stakes[4]?.tightestBend ?? 0), 6);
});

test('whatever may be planned is read off in finite numbers, and said without them missing', () => {
  fc.assert(
    fc.property(anyPlan, (plan) => {
      const reading = readingOf(plan);
      const found = findings(reading);
      const { summary, rows, stakes, cutList } = reading;
      const missing: string[] = [];
      JSON.stringify([summary, rows, stakes, cutList, found], (key, value) => {
        if (typeof value === 'number' && !Number.isFinite(value)) missing.push(key);
        return value;
      });
      expect(missing).toEqual([]);
      for (const { text } of found) expect(text).not.toMatch(/NaN|undefined|Infinity/);
    }),
    { numRuns: 60 },
  );
});

test.each(demos)('the girths of $title are reached to 0.1 %', ({ plan }) => {
  for (const { girth, girthReached } of settleBasket(plan).rows) {
    expect(Math.abs(girthReached / girth - 1)).toBeLessThan(0.001);
  }
});

test.each(demos)(
  '$title is as tall as its highest stake and no taller than its wall and lift',
  ({ plan }) => {
    const { summary, rows } = settleBasket(plan);
    const wall = rows.at(-1)?.wall ?? 0;
    expect(summary.height).toBeGreaterThan(0.5 * wall);
    expect(summary.height).toBeLessThan(wall + summary.footHeight + baseLift(plan.base) + 5);
  },
);
