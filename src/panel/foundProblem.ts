import { panelWords } from '#words/panel.ts';
import { problemsOf } from '../plan/problems.ts';
import type { Plan } from '../plan/schema.ts';
import { planSchema } from '../plan/schema.ts';

/** Why a plan cannot be, as `allowed; found …`, or null where it can. */
export function foundProblem(plan: Plan): string | null {
  const reading = planSchema.safeParse(plan);
  if (reading.success) return null;
  const first = problemsOf(reading.error.issues, plan, plan.name)[0];
  if (!first) return panelWords.refusedWhole;
  return panelWords.refused(first.allowed, first.found);
}
