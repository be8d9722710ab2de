/** Where the browser has no database, the plan at hand is kept as a draft in its plain storage. */
import type { StoreApi } from 'zustand/vanilla';
import type { DraftStore } from './draft.ts';
import { keepDraft, keptDraft } from './draft.ts';
import { newHistory } from './history.ts';
import type { Studio } from './studio.ts';

/** Edits are kept once they rest for this long, ms. */
const rest = 500;

/** Restores the studio from the draft kept last time, and keeps its plan from now on. */
export function keepAsDraft(studio: StoreApi<Studio>, store: DraftStore | null): void {
  const draft = keptDraft(store);
  studio.getState().restore(draft ? newHistory(draft) : studio.getState().history);
  let resting: ReturnType<typeof setTimeout> | undefined;
  const keep = () => {
    clearTimeout(resting);
    resting = undefined;
    keepDraft(store, studio.getState().plan);
  };
  studio.subscribe(({ plan }, { plan: before }) => {
    if (plan === before) return;
    clearTimeout(resting);
    resting = setTimeout(keep, rest);
  });
  globalThis.addEventListener('pagehide', () => {
    if (resting !== undefined) keep();
  });
}
