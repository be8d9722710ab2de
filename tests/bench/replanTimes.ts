/** From a measurement to the replanned rows and their settled shape, as the bench does it. */
import { fileURLToPath } from 'node:url';
import { atTheBench } from '../../src/model/replan/atTheBench.ts';
import { tapeOver } from '../../src/model/replan/woven.ts';
import { prepare, shapeMemory } from '../../src/model/settle/settlePlan.ts';
import { settleBasket } from '../../src/model/settleBasket.ts';
import type { Plan } from '../../src/plan/schema.ts';
import { demoPlan } from './plans.ts';

export interface ReplanTimes {
  /** Median of the replanning alone, and of replanning, settling and reading off together, ms. */
  readonly replanMs: number;
  readonly bothMs: number;
  readonly slowestMs: number;
}

/** Measures row after row of `plan`, each 3 % tight or less, `count` times. */
export function replanTimes(plan: Plan, count: number): ReplanTimes {
  const memory = shapeMemory();
  const planned = settleBasket(plan, memory);
  const plannedOver = tapeOver(planned.rows);
  let over = plannedOver;
  const measured: Record<string, number> = {};
  const taken = Array.from({ length: count }, (_, index) => {
    const row = 1 + ((5 + index) % (planned.rows.length - 2));
    const tape = planned.rows[row - 1]?.tapeGirth ?? Number.NaN;
    measured[row] = tape * (0.97 + 0.0015 * index);
    prepare(memory);
    const began = performance.now();
    const { table } = atTheBench({ ...untouched, plan, done: row, measured, over, plannedOver });
    const replanned = performance.now();
    over = tapeOver(settleBasket(table, memory).rows);
    return { replan: replanned - began, both: performance.now() - began };
  });
  const both = taken.map((one) => one.both).sort((a, b) => a - b);
  const replan = taken.map((one) => one.replan).sort((a, b) => a - b);
  return {
    replanMs: replan[count >> 1] ?? Number.NaN,
    bothMs: both[count >> 1] ?? Number.NaN,
    slowestMs: both.at(-1) ?? Number.NaN,
  };
}

const untouched = {
  backOver: null,
  keepsBelly: true,
  rim: null,
  limits: null,
  added: null,
  taken: null,
  packing: 1,
} as const;

// By itself: `npx tsx tests/bench/replanTimes.ts`.
if (process.argv[1] === fileURLToPath(import.meta.url)) console.log(replanTimes(demoPlan, 20));
