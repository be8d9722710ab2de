/** Runs that only make the engine compile the code of a drag, so that the first one is as quick as later ones. */
import { basketMesh } from '../mesh/basketMesh.ts';
import type { ShapeMemory } from '../model/settle/settlePlan.ts';
import { prepare, shapeMemory } from '../model/settle/settlePlan.ts';
import { settleBasket } from '../model/settleBasket.ts';
import type { Plan } from '../plan/schema.ts';

/** Rounds, each of about a hundredth of a second once compiled. Even, so that the last is of the plan itself. */
const rounds = 8;

/**
 * Makes rounds, once for a page, while nothing is asked; a question puts an end to them. A shape that is not
 * at rest is left alone, since each round would then be a whole settling, which a question has to wait for.
 */
export function rehearsal(): { start(plan: Plan, memory: ShapeMemory): void; end(): void } {
  let left = rounds;
  let timer: ReturnType<typeof setTimeout> | undefined;
  const round = (plan: Plan, memory: ShapeMemory) => {
    left -= 1;
    // a little more girth and back in turn, as under a hand
    const share = left % 2 === 0 ? 1 : 1.001;
    const points = plan.girthLine.points.map(({ row, girth }) => ({ row, girth: girth * share }));
    const nudged = { ...plan, girthLine: { ...plan.girthLine, points } };
    try {
      basketMesh(settleBasket(nudged, memory), { light: true });
      prepare(memory);
    } catch {
      // nobody has asked for this: no question may fail for it, and none goes on from it
      Object.assign(memory, shapeMemory());
    }
    next(plan, memory);
  };
  const next = (plan: Plan, memory: ShapeMemory) => {
    // by way of the queue, so that a question is heard between two rounds
    if (left > 0 && memory.work) timer = setTimeout(round, 0, plan, memory);
  };
  return {
    start: next,
    end() {
      clearTimeout(timer);
    },
  };
}
