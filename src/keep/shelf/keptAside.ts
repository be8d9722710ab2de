/** Plans that an older Girthline put aside while comparing, in the browser's plain storage. */
import { checkPlan } from '../../plan/read.ts';
import type { Plan } from '../../plan/schema.ts';
import type { DraftStore } from '../draft.ts';

const key = 'girthline.aside';

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

/** Forgets the plans put aside, once they are on the shelf. */
export function forgetAside(store: DraftStore | null): void {
  try {
    store?.removeItem(key);
  } catch {}
}
