/** Plans that an older Girthline put aside while comparing, in the browser's plain storage. */
import { checkPlan } from '../../plan/read.ts';
import type { Plan } from '../../plan/schema.ts';
import type { DraftStore } from '../draft.ts';

const key = 'girthline.aside';

/** The plans put aside, the latest first; what this version cannot read is left out. */
export function plansAside(store: DraftStore | null): readonly Plan[] {
  return kept(store).flatMap((one) => {
    const reading = checkPlan(one, 'a plan put aside');
    return reading.ok ? [reading.plan] : [];
  });
}

/** Forgets the plans put aside, once they are on the shelf; what this version cannot read stays. */
export function forgetAside(store: DraftStore | null): void {
  const unread = kept(store).filter((one) => !checkPlan(one, 'a plan put aside').ok);
  try {
    if (unread.length > 0) store?.setItem(key, JSON.stringify(unread));
    else store?.removeItem(key);
  } catch {}
}

function kept(store: DraftStore | null): readonly unknown[] {
  try {
    const list: unknown = JSON.parse(store?.getItem(key) ?? '[]');
    return Array.isArray(list) ? list : [];
  } catch {
    return [];
  }
}
