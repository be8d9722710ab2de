/** The worker: settles one plan after another, keeping the last shape to start the next from. */
import { basketMesh } from '../mesh/basketMesh.ts';
import { prepare, shapeMemory } from '../model/settle/settlePlan.ts';
import { settleBasket } from '../model/settleBasket.ts';
import { buffersOf } from './buffersOf.ts';
import type { Answer, Question } from './question.ts';
import { rehearsal } from './rehearse.ts';

/** The worker's side of the wire; the DOM library types `self` as a window. */
const page = globalThis as unknown as {
  onmessage: ((event: MessageEvent<Question>) => void) | null;
  postMessage(answer: Answer, transfer?: Transferable[]): void;
};

let memory = shapeMemory();
const rehearsing = rehearsal();

page.onmessage = ({ data: { number, plan, fresh, drags } }) => {
  const began = performance.now();
  rehearsing.end();
  if (fresh) memory = shapeMemory();
  try {
    const basket = settleBasket(plan, memory);
    const mesh = basketMesh(basket, { light: !fresh });
    const milliseconds = performance.now() - began;
    page.postMessage({ kind: 'settled', number, basket, mesh, milliseconds }, buffersOf(mesh));
    // The next edit starts quicker from a factor made at rest.
    prepare(memory);
    if (drags) rehearsing.start(plan, memory);
  } catch (error) {
    memory = shapeMemory();
    page.postMessage({ kind: 'failed', number, reason: String(error) });
  }
};
