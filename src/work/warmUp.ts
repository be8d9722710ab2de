/** Runs that only make the engine compile the code of a drag, so that the first one is as quick as later ones. */
import { basketMesh } from '../mesh/basketMesh.ts';
import { prepare, shapeMemory } from '../model/settle/settlePlan.ts';
import { settleBasket } from '../model/settleBasket.ts';
import type { Plan } from '../plan/schema.ts';

/** Rounds, each of about a hundredth of a second once compiled. */
const rounds = 12;

/** Time without a question after which a round is made, ms. */
const still = 150;

/** Makes rounds while nothing is asked; `interrupt` puts them off until there is rest again. */
export function warmUp(): { rest(plan: Plan): void; interrupt(): void } {
  const memory = shapeMemory();
  let left = rounds;
  let timer: ReturnType<typeof setTimeout> | undefined;
  const round = (plan: Plan) => {
    left -= 1;
    // a little more and a little less girth in turn, as under a hand
    const share = left % 2 === 0 ? 1.002 : 0.998;
    const points = plan.girthLine.points.map(({ row, girth }) => ({ row, girth: girth * share }));
    try {
      const nudged = { ...plan, girthLine: { ...plan.girthLine, points } };
      basketMesh(settleBasket(nudged, memory), { light: true });
      prepare(memory);
    } catch {
      left = 0;
    }
    if (left > 0) timer = setTimeout(round, 0, plan);
  };
  return {
    rest(plan) {
      if (left > 0) timer = setTimeout(round, still, plan);
    },
    interrupt() {
      clearTimeout(timer);
    },
  };
}
