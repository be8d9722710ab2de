import { useEffect, useRef, useState } from 'react';
import { changeBands, changeBase } from '../plan/rescale.ts';
import type { Plan } from '../plan/schema.ts';
import { foundProblem } from './foundProblem.ts';

/** Hands on a changed plan, what was done, and a key that is the same for a run of small steps. */
export type ChangePlan = (plan: Plan, label: string, merge?: string) => void;

/** Edits of a plan. Each gives back why it cannot be, and leaves the plan as it was, or null. */
export interface PlanEdits {
  /** The present plan. */
  readonly plan: () => Plan;
  readonly change: (label: string, change: (plan: Plan) => Plan, merge?: boolean) => string | null;
  /** The girth line follows the base, unless it is held. */
  readonly base: (label: string, base: Plan['base'], merge?: boolean) => string | null;
  /** The girth line follows the rows, unless it is held. */
  readonly bands: (label: string, bands: Plan['bands'], merge?: boolean) => string | null;
}

/** Edits that stay the same object while the plan changes beneath them. */
export function usePlanEdits(plan: Plan, onChange: ChangePlan, hold: boolean): PlanEdits {
  const latest = useRef({ plan, onChange, hold });
  useEffect(() => {
    latest.current = { plan, onChange, hold };
  });
  const [edits] = useState((): PlanEdits => {
    const change: PlanEdits['change'] = (label, make, merge = false) => {
      const { plan: before, onChange: tell } = latest.current;
      const after = make(before);
      const problem = foundProblem(after);
      if (problem === null) tell(after, label, merge ? `panel:${label}` : undefined);
      return problem;
    };
    return {
      plan: () => latest.current.plan,
      change,
      base: (label, base, merge) =>
        change(label, (now) => changeBase(now, base, { hold: latest.current.hold }), merge),
      bands: (label, bands, merge) =>
        change(label, (now) => changeBands(now, bands, { hold: latest.current.hold }), merge),
    };
  });
  return edits;
}
