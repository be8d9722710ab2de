/** The comparison of this page, and a hook for each of its two plans. */
import { useStore } from 'zustand';
import type { Plan } from '../plan/schema.ts';
import { settler } from '../work/caller.ts';
import type { Comparison, Side } from './compareStudio.ts';
import { comparison, copyOf } from './compareStudio.ts';
import { keepSecond, lookAtAsSecond, openKeptAsSecond } from './keepSecond.ts';
import { lookAt, openKept } from './openKept.ts';
import type { Studio } from './studio.ts';
import { studio } from './studio.ts';
import { here } from './useStudio.ts';

const compared = comparison(here, (plan) => {
  const second = studio(plan, settler);
  keepSecond(second);
  return second;
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

/** Opens the comparison with `plan` beside the one at hand; it goes on the shelf once it is changed. */
export function compareWith(plan: Plan): void {
  compared.getState().open();
  putInPlace('b', plan);
}

/** Puts a plan in the place of one of the two; it goes on the shelf once it is changed. */
export function putInPlace(side: Side, plan: Plan): void {
  const { second } = compared.getState();
  if (side === 'a') lookAt(plan);
  else if (second) lookAtAsSecond(second, plan);
}

/** Puts a plan of the shelf in the place of one of the two. Gives what is wrong with it, or null. */
export async function putKeptInPlace(side: Side, id: string): Promise<string | null> {
  const other = presentSide(side === 'a' ? 'b' : 'a');
  if (other.history.id === id) {
    putInPlace(side, copyOf(other.plan));
    return null;
  }
  return side === 'a' ? openKept(id) : openKeptAsSecond(id);
}
