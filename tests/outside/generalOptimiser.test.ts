/** Source: the registry. The conjugate gradients of fmin on the model's own energy, from the same start. */
import { describe, expect, test } from 'vitest';
import { refresh } from '../../src/model/settle/newton.ts';
import { settle } from '../../src/model/settle/settle.ts';
import { work } from '../../src/model/settle/work.ts';
import type { Plan, PlanDocument } from '../../src/plan/schema.ts';
import { settleByLibrary } from '../bench/generalOptimiser.ts';
import { netOf } from '../model/readings.ts';
import { farthest, matPlan } from '../model/settle/shapes.ts';

const small = { lengthwise: 3, crosswise: 3, rows: 5 };
const pinned = {
  corners: { kind: 'pinned', rows: 3, hold: 0.5, holdRows: 4 },
  upsett: 'rolled',
  centreLift: 5,
} as Partial<PlanDocument['base']>;

const plans: readonly (readonly [string, Plan])[] = [
  ['3 + 3 stakes and 5 rows', matPlan(small)],
  ['a split stake', matPlan({ ...small, oddEnd: { kind: 'split' } })],
  [
    'pinned corners, a lift and a flare',
    matPlan({ ...small, crosswise: 4, rows: 6, base: pinned, girths: [[6, 1.1]], set: 0.4 }),
  ],
  ['a narrowing wall', matPlan({ lengthwise: 4, crosswise: 4, rows: 8, girths: [[8, 0.85]] })],
];

describe('a general-purpose optimiser ends at the same energy, within 0.1 %, and the same shape', () => {
  test.each(plans)(
    'for %s',
    (_, plan) => {
      const net = netOf(plan);
      const own = work(net, plan.set.stakes);
      expect(settle(own).converged).toBe(true);
      const energy = refresh(own, new Float64Array(own.lead.length), false);
      const other = work(net, plan.set.stakes);
      const found = settleByLibrary(other);
      expect(found.worstGap).toBeLessThan(1e-3);
      expect(Math.abs(found.energy / energy - 1)).toBeLessThan(1e-3);
      expect(farthest(own.x, other.x)).toBeLessThan(0.05);
    },
    60_000,
  );

  test.each(plans)(
    'from where ours came to rest it finds nothing lower for %s',
    (_, plan) => {
      const own = work(netOf(plan), plan.set.stakes);
      settle(own);
      const energy = refresh(own, new Float64Array(own.lead.length), false);
      own.lead.forEach((value, i) => {
        if (value !== 0) own.lead[i] = value + 0.5 * Math.sin(5 * i);
      });
      const found = settleByLibrary(own);
      expect(Math.abs(found.energy / energy - 1)).toBeLessThan(1e-3);
    },
    60_000,
  );
});
