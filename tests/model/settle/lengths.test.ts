import { describe, expect, test } from 'vitest';
import { smoothLength } from '../../../src/model/net/smoothLength.ts';
import { usualLimits } from '../../../src/model/settle/settle.ts';
import { settlePlan } from '../../../src/model/settle/settlePlan.ts';
import { settleBasket } from '../../../src/model/settleBasket.ts';
import { demos } from '../../../src/plan/demo/demos.ts';
import type { Plan } from '../../../src/plan/schema.ts';
import { place } from '../readings.ts';
import { belliedPlan, matPlan } from './shapes.ts';

const plans: readonly (readonly [string, Plan])[] = [
  ...demos.map(({ title, plan }) => [title, plan] as const),
  ['a belly over pinned corners', belliedPlan],
];

describe('every girth is within 0.1 % of the plan and every stake segment within 0.5 % of its length', () => {
  test.each(plans)('in %s', (_, plan) => {
    const { net, positions, settling } = settleBasket(plan);
    expect(settling.converged).toBe(true);
    for (const { nodes, girth, spacing, cornerLength } of net.rows.slice(1)) {
      const points = Array.from(nodes, (node) => place(positions, node)).flat();
      const reached = smoothLength(points, spacing) + cornerLength;
      expect(Math.abs(reached / girth - 1)).toBeLessThan(1e-3);
    }
    for (const { nodes, rest } of net.stakes) {
      rest.forEach((length, i) => {
        const [a, b] = [place(positions, nodes[i] ?? 0), place(positions, nodes[i + 1] ?? 0)];
        const chord = Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
        expect(Math.abs(chord / length - 1)).toBeLessThan(5e-3);
      });
    }
  });
});

const rows = 10;
/** 10 rows of 5 mm: a wall that lies flat takes 2π·5 = 31.4 mm a row; the base is 480 mm round. */
const withGirths = (girths: readonly (readonly [number, number])[]) =>
  matPlan({ rows, girths: girths.map(([row, girth]) => [row, girth / 480] as const) });

const impossible: readonly (readonly [string, Plan, 'ruffles' | 'folds', number])[] = [
  ['opens by 60 mm a row', withGirths([[10, 1080]]), 'ruffles', 60],
  [
    'opens by 500 mm in one row',
    withGirths([
      [1, 480],
      [5, 480],
      [6, 980],
    ]),
    'ruffles',
    500,
  ],
  ['closes by 46 mm a row', withGirths([[10, 20]]), 'folds', 46],
  [
    'has a row of 20 mm',
    withGirths([
      [4, 480],
      [5, 20],
      [6, 480],
    ]),
    'folds',
    460,
  ],
  ['is 10 m round at the rim', withGirths([[10, 10_000]]), 'ruffles', 952],
];

describe('a plan that cannot be woven', () => {
  test.each(impossible)(
    'that %s comes back as a compromise that says so',
    (_, plan, kind, least) => {
      const { positions, findings, settling, rows: readings, summary } = settleBasket(plan);
      expect(positions.every(Number.isFinite)).toBe(true);
      expect(
        Object.values(summary).flatMap((value) => (typeof value === 'number' ? [value] : [])),
      ).toSatisfy((values: number[]) => values.every(Number.isFinite));
      expect(settling.iterations).toBeLessThanOrEqual(usualLimits.iterations);
      const limits = findings.filter((finding) => finding.kind === kind);
      expect(Math.abs(limits[0]?.value ?? 0)).toBeGreaterThanOrEqual(least * 0.9);
      for (const { row, girth, girthReached } of readings) {
        const said = findings.some(
          (finding) => finding.kind === 'girth-not-reached' && finding.rows.includes(row),
        );
        expect(said).toBe(Math.abs(girthReached / girth - 1) > 1e-3);
      }
    },
  );

  test('is worked on for a bounded number of iterations and factorisations', () => {
    for (const [, plan] of impossible) {
      const { outcome } = settlePlan(plan);
      expect(outcome.iterations).toBeLessThanOrEqual(usualLimits.iterations);
      expect(outcome.factorisations).toBeLessThanOrEqual(usualLimits.factorisations);
    }
  });
});
