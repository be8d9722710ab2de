/** Plans that an older Girthline put aside while comparing, in the browser's plain storage. */
import { checkPlan } from '../../plan/read.ts';
import type { Plan } from '../../plan/schema.ts';
import type { DraftStore } from '../draft.ts';

const key = 'girthline.aside';

/** The plans put aside, the latest first; what this version cannot read is left out. */
export function plansAside(store: DraftStore | null): readonly Plan[] {
  try {
    return kept(store).flatMap((one) => {
      const reading = checkPlan(one, '');
      return reading.ok ? [reading.plan] : [];
    });
  } catch {
    return [];
  }
}

/** Forgets the plans put aside, once they are on the shelf; what this version cannot read stays. */
export function forgetAside(store: DraftStore | null): void {
  try {
    const unread = kept(store).filter((one) => !checkPlan(one, '').ok);
    if (unread.length > 0) store?.setItem(key, JSON.stringify(unread));
    else store?.removeItem(key);
  } catch {}
}

/** What is kept. Throws for what is no list, and where the storage may not be used. */
function kept(store: DraftStore | null): readonly unknown[] {
  const list: unknown = JSON.parse(store?.getItem(key) ?? '[]');
  if (!Array.isArray(list)) throw new Error('no list');
  return list;
}
