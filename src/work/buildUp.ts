/** The page's side of the build-up: a worker that settles all rows ahead and can be stopped. */
import { workWords } from '#words/work.ts';
import type { Basket } from '../model/basket.ts';
import { rowCount } from '../plan/counts.ts';
import type { Plan } from '../plan/schema.ts';

export interface BuildUpQuestion {
  readonly plan: Plan;
  readonly rows: number;
}

/** The basket after a row, or why there is none. */
export type BuildUpAnswer =
  | { readonly kind: 'row'; readonly row: number; readonly basket: Basket }
  | { readonly kind: 'failed'; readonly row: number; readonly reason: string };

/** The part of a Worker that is used. */
export interface BuildUpPort {
  onmessage: ((event: MessageEvent<BuildUpAnswer>) => void) | null;
  onerror: ((event: ErrorEvent) => void) | null;
  postMessage(question: BuildUpQuestion): void;
  terminate(): void;
}

export interface BuildUpListener {
  /** Called for row 1, 2, … in turn. */
  readonly onRow: (row: number, basket: Basket) => void;
  readonly onFailed: (reason: string) => void;
}

/** Starts settling the basket after each of its rows; what is returned stops it. */
export function buildUp(
  plan: Plan,
  { onRow, onFailed }: BuildUpListener,
  start: () => BuildUpPort = buildUpWorker,
): () => void {
  const rows = rowCount(plan);
  const worker = start();
  const end = () => {
    worker.onmessage = null;
    worker.onerror = null;
    worker.terminate();
  };
  worker.onmessage = ({ data }) => {
    if (data.kind === 'failed') {
      end();
      onFailed(workWords.atRow(data.row, data.reason));
      return;
    }
    if (data.row === rows) end();
    onRow(data.row, data.basket);
  };
  worker.onerror = (event) => {
    event.preventDefault?.();
    end();
    onFailed(event.message || workWords.stopped);
  };
  worker.postMessage({ plan, rows });
  return end;
}

function buildUpWorker(): BuildUpPort {
  return new Worker(new URL('./buildUpWorker.ts', import.meta.url), { type: 'module' });
}
