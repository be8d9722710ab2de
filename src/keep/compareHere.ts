/** The comparison of this page, and a hook for each of its two plans. */
import { useStore } from 'zustand';
import { settler } from '../work/caller.ts';
import { putAside } from './compareShelf.ts';
import type { Comparison, Side } from './compareStudio.ts';
import { comparison } from './compareStudio.ts';
import { browserStore } from './draft.ts';
import type { Studio } from './studio.ts';
import { studio } from './studio.ts';
import { here } from './useStudio.ts';

const compared = comparison(here, (plan) => studio(plan, settler));

// a second plan that was worked on is not lost with the page
globalThis.addEventListener('pagehide', () => {
  const second = compared.getState().second?.getState();
  if (second && second.history.past.length > 0) putAside(browserStore(), second.plan);
});

/** What `pick` takes from the comparison; the component is drawn anew when it changes. */
export function useComparison<T>(pick: (comparison: Comparison) => T): T {
  return useStore(compared, pick);
}

/** The comparison as it is now, for use outside of drawing. */
export function presentComparison(): Comparison {
  return compared.getState();
}

/** What `pick` takes from the studio of one of the two plans. */
export function useSide<T>(side: Side, pick: (studio: Studio) => T): T {
  const second = useComparison(({ second }) => second);
  return useStore(side === 'b' && second ? second : here, pick);
}

/** The studio of one of the two plans as it is now. */
export function presentSide(side: Side): Studio {
  const { second } = compared.getState();
  return (side === 'b' && second ? second : here).getState();
}
