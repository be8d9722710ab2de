/** The plan at hand in the browser's plain storage, for a browser that has no database. */
import { readPlan, writePlan } from '../plan/read.ts';
import type { Plan } from '../plan/schema.ts';

/** The part of the browser's storage that a draft uses. */
export type DraftStore = Pick<Storage, 'getItem' | 'setItem' | 'removeItem'>;

const key = 'girthline.draft';

/** The plan kept last time; null where there is none, or none that this version can read. */
export function keptDraft(store: DraftStore | null): Plan | null {
  try {
    const text = store?.getItem(key);
    if (!text) return null;
    const reading = readPlan(text, '');
    return reading.ok ? reading.plan : null;
  } catch {
    return null;
  }
}

/** Keeps `plan`. A browser that allows no storage, or has none left, is not an error. */
export function keepDraft(store: DraftStore | null, plan: Plan): void {
  try {
    store?.setItem(key, writePlan(plan));
  } catch {}
}

/** Forgets the kept plan. */
export function forgetDraft(store: DraftStore | null): void {
  try {
    store?.removeItem(key);
  } catch {}
}

/** The browser's storage, or null where it may not be used. */
export function browserStore(): Storage | null {
  try {
    return globalThis.localStorage ?? null;
  } catch {
    return null;
  }
}

/** The storage that a tab has to itself, through its reloads; null where it may not be used. */
export function tabStore(): Storage | null {
  try {
    return globalThis.sessionStorage ?? null;
  } catch {
    return null;
  }
}
