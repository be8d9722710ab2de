/**
 * The basket on the table, settled by a worker of its own. The worker is started when the bench is
 * opened and never ended while it answers, so that a page that has lost its connection still settles.
 */
import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';
import { keepingWords } from '#words/keeping.ts';
import type { Basket } from '../model/basket.ts';
import type { Plan } from '../plan/schema.ts';
import { settleWorker } from '../work/caller.ts';
import type { Line } from '../work/line.ts';
import { line } from '../work/line.ts';

interface BenchTable {
  readonly basket: Basket | null;
  /** False for the quick picture, settled from the last shape: numbers are taken off a final one. */
  readonly isFinal: boolean;
  readonly problem: string | null;
}

/** How long a settling may take, ms. */
const patience = 30_000;

const here = createStore<BenchTable>(() => ({
  basket: null,
  isFinal: false,
  problem: null,
}));
let worker: Line | null = null;
let newest = 0;
let asked: { readonly plan: Plan; readonly time: number } | null = null;

/** What is known of the basket on the table. */
export function useBenchTable(): BenchTable {
  return useStore(here);
}

/**
 * Settles `plan` from the last shape, for a quick picture, and then from the start: the girths to come hang
 * on the shape, and the same measurements are to give the same girths whatever was on the table before.
 */
export function layOnTable(plan: Plan): void {
  newest += 2;
  asked = { plan, time: performance.now() };
  worker ??= line({ start: settleWorker, patience, onAnswer: hear });
  worker.ask({ number: newest - 1, plan, fresh: false });
  worker.ask({ number: newest, plan, fresh: true });
}

function hear(answer: Parameters<Parameters<typeof line>[0]['onAnswer']>[0]): void {
  if (answer.number < newest - 1 || !asked) return;
  if (answer.kind === 'failed') {
    here.setState({ problem: keepingWords.tableNotSettled(answer.reason) });
    return;
  }
  if (here.getState().basket?.plan !== asked.plan) {
    performance.measure('bench-to-shape', { start: asked.time });
  }
  here.setState({
    basket: { ...answer.basket, plan: asked.plan },
    isFinal: answer.number === newest,
    problem: null,
  });
}
