import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Way } from '../../../src/model/replan/gentlest.ts';
import { gentlestChanges } from '../../../src/model/replan/gentlest.ts';
import { changesByHighs } from './byHighs.ts';

/** Ways that can be gone: the sums are those of changes that keep the bounds. */
const ways = fc
  .record({
    steps: fc.array(
      fc.record({
        least: fc.integer({ min: -40, max: 10 }),
        room: fc.integer({ min: 1, max: 50 }),
        share: fc.integer({ min: 5, max: 95 }),
      }),
      { minLength: 2, maxLength: 24 },
    ),
    before: fc.integer({ min: -30, max: 30 }),
    after: fc.option(fc.integer({ min: -30, max: 30 })),
    inner: fc.nat(),
    hasCeiling: fc.boolean(),
  })
  .map(({ steps, before, after, inner, hasCeiling }): Way => {
    const changes = steps.map(({ least, room, share }) => least + (room * share) / 100);
    const upTo = (rows: number) => changes.slice(0, rows).reduce((sum, one) => sum + one, 0);
    const middle = 1 + (inner % (steps.length - 1));
    return {
      before,
      after,
      least: steps.map(({ least }) => least),
      most: steps.map(({ least, room }) => least + room),
      sums: [middle, steps.length].map((rows) => ({ rows, sum: upTo(rows) })),
      ceiling: hasCeiling ? steps.map((_, k) => upTo(k + 1) + 3) : null,
    };
  });

test('the way is the optimum that a general solver finds', () => {
  fc.assert(
    fc.property(ways, (way) => {
      const ours = gentlestChanges(way);
      const theirs = changesByHighs(way);
      expect(bend(way, ours)).toBeLessThanOrEqual(bend(way, theirs) * (1 + 1e-6) + 1e-6);
      ours.forEach((change, k) => {
        expect(Math.abs(change - (theirs[k] ?? 0))).toBeLessThan(0.02);
      });
    }),
    { numRuns: 150 },
  );
});

test('the way keeps its bounds, its sums and its ceiling', () => {
  fc.assert(
    fc.property(ways, (way) => {
      const changes = gentlestChanges(way);
      let sum = 0;
      changes.forEach((change, k) => {
        sum += change;
        expect(change).toBeGreaterThanOrEqual(way.least[k] ?? 0);
        expect(change).toBeLessThanOrEqual(way.most[k] ?? 0);
        if (way.ceiling) expect(sum).toBeLessThanOrEqual((way.ceiling[k] ?? 0) + 1e-6);
        const aim = way.sums.find(({ rows }) => rows === k + 1);
        if (aim) expect(sum).toBeCloseTo(aim.sum, 6);
      });
    }),
  );
});

test('an aim beyond all bounds is refused', () => {
  const way = { before: 0, after: null, least: [-1, -1], most: [1, 1] };
  expect(() => gentlestChanges({ ...way, sums: [{ rows: 2, sum: 3 }] })).toThrow(/limits/);
});

/** Sum of squared differences of neighbours, rows before and after included. */
function bend({ before, after }: Way, changes: Float64Array): number {
  const all = [before, ...changes, ...(after === null ? [] : [after])];
  return all.slice(1).reduce((sum, one, i) => sum + (one - (all[i] ?? 0)) ** 2, 0);
}
