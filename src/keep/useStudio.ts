/** The studio of this page: opened with the plan kept in the browser, or else the first demo. */
import { useStore } from 'zustand';
import { demos } from '../plan/demo/demos.ts';
import { settler } from '../work/caller.ts';
import { browserStore, forgetDraft, keepDraft, keptDraft } from './draft.ts';
import type { Studio } from './studio.ts';
import { studio } from './studio.ts';

/** Edits are kept once they rest for this long, ms. */
const restBeforeKeeping = 500;

const store = browserStore();
/** The studio of the page itself. */
export const here = studio(keptDraft(store) ?? demos[0].plan, settler);
keepEdits();

/** What `pick` takes from the studio; the component is drawn anew when it changes. */
export function useStudio<T>(pick: (studio: Studio) => T): T {
  return useStore(here, pick);
}

/** The studio as it is now, for use outside of drawing. */
export function presentStudio(): Studio {
  return here.getState();
}

/** Opens the page anew with the first demo, in case the kept plan is what stops it. */
export function startAgain(): void {
  here.getState().open(demos[0].plan);
  forgetDraft(store);
  globalThis.location.reload();
}

function keepEdits(): void {
  let resting: ReturnType<typeof setTimeout> | undefined;
  const keep = () => {
    clearTimeout(resting);
    resting = undefined;
    keepDraft(store, here.getState().plan);
  };
  here.subscribe(({ plan }, { plan: before }) => {
    if (plan === before) return;
    clearTimeout(resting);
    resting = setTimeout(keep, restBeforeKeeping);
  });
  globalThis.addEventListener('pagehide', () => {
    if (resting !== undefined) keep();
  });
}
