/** Plans that were put aside while comparing, kept in the browser so that they can be opened again. */
import { checkPlan } from '../plan/read.ts';
import type { Plan } from '../plan/schema.ts';
import type { DraftStore } from './draft.ts';

const key = 'girthline.aside';

/** The oldest goes when one more is kept. */
const most = 24;

/** The plans put aside, the latest first; what this version cannot read is left out. */
export function plansAside(store: DraftStore | null): readonly Plan[] {
  try {
    const kept: unknown = JSON.parse(store?.getItem(key) ?? '[]');
    if (!Array.isArray(kept)) return [];
    return kept.flatMap((one: unknown) => {
      const reading = checkPlan(one, 'a plan put aside');
      return reading.ok ? [reading.plan] : [];
    });
  } catch {
    return [];
  }
}

/** Puts `plan` aside, in place of one of the same name; false if the browser keeps nothing. */
export function putAside(store: DraftStore | null, plan: Plan): boolean {
  const others = plansAside(store).filter(({ name }) => name !== plan.name);
  try {
    store?.setItem(key, JSON.stringify([plan, ...others].slice(0, most)));
    return store !== null;
  } catch {
    return false;
  }
}
