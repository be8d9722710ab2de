import { describe, expect, test } from 'vitest';
import { fold, gather, pick, unfold } from '../../../src/model/settle/fold.ts';
import { settle } from '../../../src/model/settle/settle.ts';
import { work } from '../../../src/model/settle/work.ts';
import { demos } from '../../../src/plan/demo/demos.ts';
import type { Plan } from '../../../src/plan/schema.ts';
import { netOf } from '../readings.ts';
import { belliedPlan, farthest, matPlan } from './shapes.ts';

const plans: readonly (readonly [string, Plan])[] = [
  ...demos.map(({ title, plan }) => {
    const even: Plan = { ...plan, oddEnd: { ...plan.oddEnd, kind: 'none' } };
    return [title, even] as const;
  }),
  ['a belly over pinned corners', belliedPlan],
  ['a fanned base', matPlan({ base: { corners: { kind: 'fanned', rows: 3 } } as never, rows: 12 })],
];

describe('folding over the mirror planes changes nothing', () => {
  test.each(plans)(
    'for %s',
    (_, plan) => {
      const net = netOf(plan);
      const folded = work(net, plan.set.stakes);
      const whole = work(net, plan.set.stakes, 'none');
      expect(settle(folded).converged).toBe(true);
      expect(settle(whole).converged).toBe(true);
      expect(folded.lead.length).toBeLessThan(whole.lead.length / 3);
      expect(farthest(folded.x, whole.x)).toBeLessThan(0.05);
    },
    60_000,
  );
});

test('a shape that mirrors is unfolded from its leads as it was', () => {
  const net = netOf(matPlan({ lengthwise: 4, crosswise: 5, rows: 4 }));
  const folded = fold(net);
  const back = new Float64Array(3 * net.nodeCount);
  unfold(folded, pick(folded, net.start), back);
  expect(farthest(back, net.start)).toBeLessThan(1e-9);
});

test('gathering is the transpose of unfolding', () => {
  const net = netOf(matPlan({ lengthwise: 3, crosswise: 5, rows: 3 }));
  const folded = fold(net);
  const size = 3 * folded.leads.length;
  const leads = Float64Array.from({ length: size }, (_, i) => Math.sin(i));
  const forces = Float64Array.from({ length: 3 * net.nodeCount }, (_, i) => Math.cos(2 * i));
  const shape = new Float64Array(3 * net.nodeCount);
  unfold(folded, leads, shape);
  const gathered = new Float64Array(size);
  gather(folded, forces, gathered);
  const dot = (a: Float64Array, b: Float64Array) =>
    a.reduce((sum, value, i) => sum + value * (b[i] ?? 0), 0);
  expect(dot(gathered, leads)).toBeCloseTo(dot(forces, shape), 9);
});
