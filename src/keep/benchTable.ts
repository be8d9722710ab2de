/**
 * The basket on the table, settled by a worker of its own. The worker is started when the bench is
 * opened and never ended while it answers, so that a page that has lost its connection still settles.
 */
import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';
import type { Basket } from '../model/basket.ts';
import type { Plan } from '../plan/schema.ts';
import { settleWorker } from '../work/caller.ts';
import type { Line } from '../work/line.ts';
import { line } from '../work/line.ts';

interface BenchTable {
  readonly basket: Basket | null;
  readonly problem: string | null;
}

/** A plan that rests for this long is settled once more from the start, ms. */
const restBeforeCold = 400;
/** How long a settling may take, ms. */
const patience = 30_000;

const here = createStore<BenchTable>(() => ({ basket: null, problem: null }));
let worker: Line | null = null;
let newest = 0;
let asked: { readonly plan: Plan; readonly time: number } | null = null;
let resting: ReturnType<typeof setTimeout> | undefined;

/** What is known of the basket on the table. */
export function useBenchTable(): BenchTable {
  return useStore(here);
}

/** Settles `plan` from the last shape, and once it rests from the start. */
export function layOnTable(plan: Plan): void {
  clearTimeout(resting);
  newest += 1;
  asked = { plan, time: performance.now() };
  worker ??= line({ start: settleWorker, patience, onAnswer: hear });
  worker.ask({ number: newest, plan, fresh: false });
  resting = setTimeout(() => worker?.ask({ number: newest, plan, fresh: true }), restBeforeCold);
}

function hear(answer: Parameters<Parameters<typeof line>[0]['onAnswer']>[0]): void {
  if (answer.number !== newest || !asked) return;
  if (answer.kind === 'failed') {
    here.setState({ problem: `The basket on the table could not be settled: ${answer.reason}.` });
    return;
  }
  if (here.getState().basket?.plan !== asked.plan) {
    performance.measure('bench-to-shape', { start: asked.time });
  }
  here.setState({
    basket: { ...answer.basket, plan: asked.plan },
    problem: null,
  });
}
