/**
 * What holds for any design. 2,000 designs, the same in every run; `npm run test:long` takes 20,000 new
 * ones. A failure prints the seed and the path that bring its design back (GIRTHLINE_SEED, and fast-check's
 * `path`).
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Basket } from '../../../src/model/basket.ts';
import { girthLine } from '../../../src/model/girth/girthLine.ts';
import { smoothLength } from '../../../src/model/net/smoothLength.ts';
import { usualLimits } from '../../../src/model/settle/settle.ts';
import { settleBasket } from '../../../src/model/settleBasket.ts';
import { rowPitch } from '../../../src/plan/counts.ts';
import { readPlan, writePlan } from '../../../src/plan/read.ts';
import type { Plan } from '../../../src/plan/schema.ts';
import { place } from '../readings.ts';
import { absurdPlan, planOfSlope } from './randomPlan.ts';

const longRuns = Number(process.env.GIRTHLINE_RUNS ?? 0);
const runs = longRuns > 0 ? longRuns : 2000;
const seedGiven = process.env.GIRTHLINE_SEED;
const seed = seedGiven === undefined ? 20_261_125 : Number(seedGiven);

/** Part of the runs, `share` of them all; always the same designs unless it is a long run. */
function runsOf(share: number): fc.Parameters<[Plan]> {
  const numRuns = Math.round(runs * share);
  return longRuns > 0 && seedGiven === undefined ? { numRuns } : { numRuns, seed };
}

/** A second settling of the plan with one more end may come first, on rougher terms. */
const most = {
  iterations: usualLimits.iterations + 120,
  factorisations: usualLimits.factorisations + 40,
};

/** Every number in a record, however deep. */
function numbersIn(value: unknown): number[] {
  if (typeof value === 'number') return [value];
  if (value === null || typeof value !== 'object') return [];
  if (ArrayBuffer.isView(value)) return Array.from(value as unknown as ArrayLike<number>);
  return Object.values(value).flatMap(numbersIn);
}

/** Rows that a finding of this kind speaks of. */
function rowsTold({ findings }: Basket, kind: string): number[] {
  const rows = findings.filter((finding) => finding.kind === kind).flatMap(({ rows }) => rows);
  return [...new Set(rows)].sort((a, b) => a - b);
}

/** Rows from 1 for which `holds`. */
function rowsWhere({ net }: Basket, holds: (row: number) => boolean): number[] {
  return net.rows.map((_, row) => row).filter((row) => row > 0 && holds(row));
}

function expectSound(plan: Plan): void {
  const basket = settleBasket(plan);
  const { net, positions, settling, summary, rows, stakes, cutList } = basket;
  expect(positions.every(Number.isFinite)).toBe(true);
  expect(numbersIn({ settling, summary, rows, stakes, cutList }).every(Number.isFinite)).toBe(true);
  expect(settling.iterations).toBeLessThanOrEqual(most.iterations);
  expect(settling.factorisations).toBeLessThanOrEqual(most.factorisations);
  expect(basket.findings.some(({ kind }) => kind === 'not-settled')).toBe(!settling.converged);

  // Girths, measured here on the shape that came out.
  const offBy = net.rows.map(({ nodes, girth, spacing, cornerLength }) => {
    const points = Array.from(nodes, (node) => place(positions, node)).flat();
    return Math.abs((smoothLength(points, spacing) + cornerLength) / girth - 1);
  });
  const told = rowsTold(basket, 'girth-not-reached');
  expect(told).toEqual(rowsWhere(basket, (row) => (offBy[row] ?? 0) > 1e-3));

  // Rows that change by more than a wall that lies flat can take, from the plan alone.
  const girths = girthLine(plan);
  const change = (row: number) => (girths[row] ?? 0) - (girths[row - 1] ?? 0);
  const flat = (row: number) =>
    Math.PI * (rowPitch(plan, row) + (row > 1 ? rowPitch(plan, row - 1) : 0)) * (1 + 1e-12);
  expect(rowsTold(basket, 'ruffles')).toEqual(rowsWhere(basket, (k) => change(k) > flat(k)));
  expect(rowsTold(basket, 'folds')).toEqual(rowsWhere(basket, (k) => -change(k) > flat(k)));

  // Stake segments, measured here.
  const stretched = net.stakes.some(({ nodes, rest }) =>
    rest.some((length, i) => {
      const [a, b] = [place(positions, nodes[i] ?? 0), place(positions, nodes[i + 1] ?? 0)];
      return Math.abs(Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]) / length - 1) > 5e-3;
    }),
  );
  expect(basket.findings.some(({ kind }) => kind === 'stake-stretched')).toBe(stretched);
}

describe('any design settles in bounded work to finite numbers, and findings tell of every limit passed', () => {
  test('with a girth line that changes gently', () => {
    fc.assert(fc.property(planOfSlope(0.25), expectSound), runsOf(0.45));
  }, 3_600_000);

  test('with a girth line that changes steeply', () => {
    fc.assert(fc.property(planOfSlope(0.7), expectSound), runsOf(0.35));
  }, 3_600_000);

  test('with any strands and any girth line that a document may hold', () => {
    fc.assert(fc.property(absurdPlan, expectSound), runsOf(0.2));
  }, 3_600_000);
});

test('a design written, read and settled again gives the same numbers', () => {
  const anyPlan = fc.oneof(planOfSlope(0.25), planOfSlope(0.7), absurdPlan);
  fc.assert(
    fc.property(anyPlan, (plan) => {
      const reading = readPlan(writePlan(plan), 'written');
      if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
      const [one, other] = [settleBasket(plan), settleBasket(reading.plan)];
      expect(other.positions).toEqual(one.positions);
      expect(other.summary).toEqual(one.summary);
      expect(other.rows).toEqual(one.rows);
      expect(other.findings).toEqual(one.findings);
    }),
    runsOf(0.05),
  );
}, 3_600_000);

test('nine in ten designs of usual strands and a gentle girth line come to rest within tolerance', () => {
  const plans = fc.sample(planOfSlope(0.25), { numRuns: 200, seed });
  const resting = plans.filter((plan) => {
    const { settling } = settleBasket(plan);
    return (
      settling.converged && settling.worstGirthError < 1e-3 && settling.worstStakeStretch < 5e-3
    );
  });
  expect(resting.length / plans.length).toBeGreaterThan(0.9);
}, 600_000);
