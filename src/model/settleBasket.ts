/** A plan in, a settled basket out: the one way through net, settling and reading off. */
import type { Plan } from '../plan/schema.ts';
import type { Basket } from './basket.ts';
import { findings } from './finding/findings.ts';
import { heightWithRim } from './quantity/heightWithRim.ts';
import { quantities } from './quantity/quantities.ts';
import { readBasket } from './read/readBasket.ts';
import { settlingOf } from './read/settling.ts';
import type { Settled, ShapeMemory } from './settle/settlePlan.ts';
import { settlePlan } from './settle/settlePlan.ts';

/**
 * Settles `plan` and reads the basket off. With a `memory` the settling starts from the last shape kept
 * in it; without one it starts cold, and the same plan gives the same numbers to the last bit.
 */
export function settleBasket(plan: Plan, memory?: ShapeMemory): Basket {
  return readSettled(plan, settlePlan(plan, memory));
}

/** Reads a settled net off and finds what should be said of it. */
export function readSettled(plan: Plan, { work, outcome }: Settled): Basket {
  const reading = readBasket(plan, work.net, work.x, settlingOf(work, outcome));
  const { weavers, grams } = quantities(reading);
  const weaverLength = weavers.reduce((sum, { length }) => sum + length, 0);
  const summary = {
    ...reading.summary,
    heightWithRim: heightWithRim(reading),
    weaverLength,
    weight: grams,
  };
  return { ...reading, summary, findings: findings(reading) };
}
