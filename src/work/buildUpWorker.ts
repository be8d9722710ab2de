/** The worker that settles a basket row by row, as it would stand after each of them. */
import { cutPlan } from '../model/buildup/cutPlan.ts';
import { settleBasket } from '../model/settleBasket.ts';
import type { BuildUpAnswer, BuildUpQuestion } from './buildUp.ts';

/** The worker's side of the wire; the DOM library types `self` as a window. */
const page = globalThis as unknown as {
  onmessage: ((event: MessageEvent<BuildUpQuestion>) => void) | null;
  postMessage(answer: BuildUpAnswer): void;
};

page.onmessage = ({ data: { plan, rows } }) => {
  for (let row = 1; row <= rows; row += 1) {
    try {
      page.postMessage({ kind: 'row', row, basket: settleBasket(cutPlan(plan, row)) });
    } catch (error) {
      page.postMessage({ kind: 'failed', row, reason: String(error) });
      return;
    }
  }
};
