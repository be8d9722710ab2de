/**
 * The page's side of settling: the latest edit wins. Edits go warm to one worker, which starts
 * from the last shape; when they pause, a second worker settles the plan cold, so that the numbers
 * that stay on the screen are the headless command's. An edit ends the cold settling at once.
 */
import type { Plan } from '../plan/schema.ts';
import type { WorkerPort } from './line.ts';
import { line } from './line.ts';
import type { Answer, Failed, Settled } from './question.ts';

/** What the caller hears of a plan it asked for. */
export type SettleResult = (Settled | Failed) & {
  readonly plan: Plan;
  /** When it was asked for, ms since the page's time origin. */
  readonly asked: number;
  /** True when it was settled from the start shape, as the headless command does. */
  readonly polished: boolean;
};

export interface Settler {
  /** `polish` settles cold straight away, for a plan that has little to do with the last one. */
  settle(plan: Plan, options: { readonly polish: boolean }): void;
  dispose(): void;
}

export interface SettlerOptions {
  readonly startWorker?: () => WorkerPort;
  /** How long edits must pause before the cold settling, ms. */
  readonly pause?: number;
  /** How long one settling may take, ms. */
  readonly patience?: number;
}

interface Asked {
  readonly plan: Plan;
  readonly time: number;
  readonly fresh: boolean;
}

/** Starts settling plans; `onResult` hears each answer that is newer than the last one heard. */
export function settler(
  onResult: (result: SettleResult) => void,
  { startWorker = settleWorker, pause = 250, patience = 20_000 }: SettlerOptions = {},
): Settler {
  const asked = new Map<number, Asked>();
  let newest = 0;
  let pausing: ReturnType<typeof setTimeout> | undefined;

  const hear = (answer: Answer, isCold: boolean) => {
    const { number } = answer;
    const question = asked.get(number);
    if (!question || (isCold && number !== newest)) return;
    for (const older of asked.keys()) if (older < number) asked.delete(older);
    const polished = isCold || question.fresh;
    if (number === newest && !polished) askColdAfterPause(number, question);
    onResult(resultOf(answer, question, polished));
  };
  const askColdAfterPause = (number: number, { plan, time }: Asked) => {
    const left = Math.max(0, pause - (performance.now() - time));
    pausing = setTimeout(() => cold.ask({ number, plan, fresh: true }), left);
  };
  const warm = line({ start: startWorker, patience, onAnswer: (answer) => hear(answer, false) });
  const cold = line({ start: startWorker, patience, onAnswer: (answer) => hear(answer, true) });

  return {
    settle(plan, { polish }) {
      clearTimeout(pausing);
      cold.cancel();
      if (polish) warm.cancel();
      newest += 1;
      asked.set(newest, { plan, time: performance.now(), fresh: polish });
      warm.ask({ number: newest, plan, fresh: polish, drags: true });
    },
    dispose() {
      clearTimeout(pausing);
      asked.clear();
      warm.dispose();
      cold.dispose();
    },
  };
}

function resultOf(answer: Answer, { plan, time }: Asked, polished: boolean): SettleResult {
  const base = { plan, asked: time, polished };
  if (answer.kind === 'failed') return { ...answer, ...base };
  return { ...answer, ...base, basket: { ...answer.basket, plan } };
}

/**
 * Stands for what the workers' code is: in the built app the address of the script that names theirs, which
 * is another one with every change of them.
 */
export const settleBuild: string = import.meta.url;

/** Starts a worker that settles plans. */
export function settleWorker(): WorkerPort {
  return new Worker(new URL('./settleWorker.ts', import.meta.url), { type: 'module' });
}
