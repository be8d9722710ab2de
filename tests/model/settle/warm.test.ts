import { describe, expect, test } from 'vitest';
import type { ShapeMemory } from '../../../src/model/settle/settlePlan.ts';
import { prepare, settlePlan, shapeMemory } from '../../../src/model/settle/settlePlan.ts';
import { demos } from '../../../src/plan/demo/demos.ts';
import type { Plan } from '../../../src/plan/schema.ts';
import { farthest, matPlan } from './shapes.ts';

/** The plan with every point of its girth line but the first of several moved out by the share `by`. */
function swollen(plan: Plan, by: number): Plan {
  const points = plan.girthLine.points.map(({ row, girth }, i) => ({
    row,
    girth: i === 0 && plan.girthLine.points.length > 1 ? girth : girth * (1 + by),
  }));
  return { ...plan, girthLine: { ...plan.girthLine, points } };
}

const edits = [0.004, 0.01, 0.025, -0.01, -0.02, 0.005];

test('the same plan settles to the same numbers to the last bit', () => {
  for (const { plan } of demos) {
    const [one, other] = [settlePlan(plan), settlePlan(plan)];
    expect([...one.work.x]).toEqual([...other.work.x]);
    expect([...one.work.tensions.loop]).toEqual([...other.work.tensions.loop]);
    expect(one.outcome).toEqual(other.outcome);
  }
}, 60_000);

describe('a girth line dragged step by step ends where a cold start ends, within 0.1 mm', () => {
  const dragged = (plan: Plan, between: (memory: ShapeMemory) => void) => {
    const memory = shapeMemory();
    settlePlan(plan, memory);
    for (const by of edits) {
      between(memory);
      const edited = swollen(plan, by);
      const warm = settlePlan(edited, memory);
      expect(warm.outcome.converged).toBe(true);
      expect(farthest(warm.work.x, settlePlan(edited).work.x)).toBeLessThan(0.1);
    }
  };

  test.each(demos)(
    'on the $title, made ready between the steps',
    ({ plan }) => {
      dragged(plan, prepare);
    },
    60_000,
  );

  test.each(demos)(
    'on the $title, without a pause',
    ({ plan }) => {
      dragged(plan, () => undefined);
    },
    60_000,
  );
});

test('an edit of the strands or the lift starts from the last shape and ends where a cold start ends', () => {
  const memory = shapeMemory();
  const plan = demos[0].plan;
  settlePlan(plan, memory);
  const mat = plan.base as Extract<Plan['base'], { kind: 'mat' }>;
  const edited: Plan[] = [
    { ...plan, base: { ...mat, centreLift: 18 } },
    { ...plan, base: { ...mat, stake: { ...mat.stake, thickness: 1.5 } } },
    { ...plan, set: { stakes: 0.3 } },
  ];
  for (const next of edited) {
    prepare(memory);
    const warm = settlePlan(next, memory);
    expect(farthest(warm.work.x, settlePlan(next).work.x)).toBeLessThan(0.1);
  }
}, 60_000);

test('a plan with other stakes is settled from its own start, as if there had been no last one', () => {
  const memory = shapeMemory();
  settlePlan(matPlan({ rows: 8 }), memory);
  const next = matPlan({ rows: 8, lengthwise: 6 });
  expect([...settlePlan(next, memory).work.x]).toEqual([...settlePlan(next).work.x]);
});
