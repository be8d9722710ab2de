import fc from 'fast-check';
import { expect, test } from 'vitest';
import { weaves } from '../../src/plan/bands.ts';
import { endCount } from '../../src/plan/counts.ts';
import { checkPlan } from '../../src/plan/read.ts';
import { remedies } from '../../src/plan/remedies.ts';
import type { Plan, Weave } from '../../src/plan/schema.ts';
import { countFit } from '../../src/plan/weaveFacts.ts';
import { anyPlan, planOf, tradeOblong } from './plans.ts';

const [band] = tradeOblong.bands;
const found = { kind: 'count-of-ends', rows: [1, 2, 3] };

/** The trade plan in some weaves, ten rows of each, with 28 ends or (one stake split) 29. */
const woven = (oddEnd: 'none' | 'split', ...kinds: readonly Weave[]): Plan =>
  planOf({
    ...tradeOblong,
    oddEnd: { kind: oddEnd },
    bands: kinds.map((weave) => ({ ...band, rows: 10, weave })),
    girthLine: { points: [{ row: 10, girth: 508 }] },
  });
const labels = (plan: Plan, rows = found.rows) =>
  remedies(plan, { ...found, rows }).map(({ label }) => label);

test('one weaver on an even count: split, add, or another weave', () => {
  expect(labels(woven('none', 'continuous'))).toEqual([
    'Split a stake',
    'Add a stake',
    'Chase two weavers',
    'Weave rows that start and stop',
  ]);
});

test('rows that close on an odd count: leave the stake whole, or one weaver', () => {
  expect(labels(woven('split', 'rounds'))).toEqual([
    'Leave the stake whole',
    'Weave with one weaver, round and round',
  ]);
});

test('what would put another band at odds with its count is not offered', () => {
  expect(labels(woven('none', 'continuous', 'rounds'))).toEqual([
    'Chase two weavers',
    'Weave rows that start and stop',
  ]);
});

test('the band that is named is the one that is woven otherwise', () => {
  const plan = woven('none', 'rounds', 'continuous');
  const [chased] = remedies(plan, { ...found, rows: [11, 12] });
  expect(chased?.plan.bands.map(({ weave }) => weave)).toEqual(['rounds', 'chased']);
});

test('of several bands that are named all those at odds with the count are woven otherwise', () => {
  const plan = woven('none', 'continuous', 'twined', 'continuous');
  const chased = remedies(plan, { ...found, rows: [1, 11, 21] }).find(
    ({ key }) => key === 'chased',
  );
  expect(chased?.plan.bands.map(({ weave }) => weave)).toEqual(['chased', 'twined', 'chased']);
});

test('a wheel and a board say it in their own words', () => {
  const { stake } = tradeOblong.base;
  const on = (base: Plan['base']) => labels({ ...woven('none', 'continuous'), base });
  const flat = { stake, upsett: 'rolled', centreLift: 0 } as const;
  expect(on({ kind: 'wheel', spokes: 8, hub: 40, diameter: 160, ...flat })).toContain(
    'Add half a spoke',
  );
  const board = { kind: 'board', shape: 'round', length: 160, thickness: 9, slot: 9 } as const;
  expect(on({ ...board, ends: 28, stake, upsett: 'rolled' })).toContain(
    'One stake more in the slot',
  );
});

test('another finding has no remedies here', () => {
  expect(remedies(woven('none', 'continuous'), { kind: 'rocks', rows: [] })).toEqual([]);
});

test('every misfit has a remedy, and every remedy is a plan that is allowed and has fewer misfits', () => {
  const misfits = (plan: Plan) =>
    plan.bands.filter(({ weave }) => countFit(weave, endCount(plan)) !== 'fits').length;
  fc.assert(
    fc.property(anyPlan, fc.constantFrom(...weaves), (any, weave) => {
      const [first, ...others] = any.bands;
      if (!first) throw new Error('no band');
      const plan = { ...any, bands: [{ ...first, weave }, ...others] };
      if (countFit(weave, endCount(plan)) === 'fits') return;
      const ways = remedies(plan, { kind: 'count-of-ends', rows: [1] });
      expect(ways.length).toBeGreaterThan(0);
      for (const way of ways) {
        expect(checkPlan(way.plan, way.label)).toEqual({ ok: true, plan: way.plan });
        expect(misfits(way.plan)).toBeLessThan(misfits(plan));
      }
    }),
    { numRuns: 500 },
  );
});
