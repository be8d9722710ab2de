/** A plan in, a settled basket out: the one way through net, settling and reading off. */
import type { Plan } from '../plan/schema.ts';
import type { Basket } from './basket.ts';
import { findings } from './finding/findings.ts';
import { girthLine } from './girth/girthLine.ts';
import { matNet } from './net/mat.ts';
import { readBasket } from './read/readBasket.ts';
import { settlingOf } from './read/settling.ts';
import { settle } from './settle/settle.ts';
import { work } from './settle/work.ts';

/** What is kept from one settling to the next, so that a small edit starts from the last shape. */
export interface ShapeMemory {
  last: Basket | null;
}

/** An empty memory: the first settling with it is a cold one. */
export function shapeMemory(): ShapeMemory {
  return { last: null };
}

/** Settles `plan`. With a `memory`, the last shape kept in it may serve as the start. */
export function settleBasket(plan: Plan, memory?: ShapeMemory): Basket {
  const net = matNet(plan, girthLine(plan));
  const settled = work(net, plan.set.stakes);
  const outcome = settle(settled);
  const reading = readBasket(plan, net, settled.x, settlingOf(settled, outcome));
  const basket: Basket = { ...reading, findings: findings(reading) };
  if (memory) memory.last = basket;
  return basket;
}
