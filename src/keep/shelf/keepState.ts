/** How it stands with the keeping of plans: what the notice at the foot of the page says. */
import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';
import type { ShelfDb } from './records.ts';
import type { TheirPlan } from './saveWork.ts';

/**
 * `none`: the browser allows no database, as in some private windows. `newer`: a newer Girthline has
 * written it. `busy`: another page holds it up. `full`: no room is left. `refused`: it would not save.
 */
export type NotKept = 'none' | 'newer' | 'busy' | 'full' | 'refused';

export interface KeepState {
  /** The shelf's database; null where there is none to be had. */
  readonly db: ShelfDb | null;
  /** Why what is changed now is not kept; null while it is. */
  readonly notKept: NotKept | null;
  /** The plan at hand as another tab has it, deleted if null; undefined where there is no clash. */
  readonly clash: TheirPlan | null | undefined;
  /** Counts the changes of the shelf, here and in other tabs. */
  readonly changes: number;
}

/** The state of this page's keeping. */
export const keepState = createStore<KeepState>(() => ({
  db: null,
  notKept: null,
  clash: undefined,
  changes: 0,
}));

/** What `pick` takes from the state; the component is drawn anew when it changes. */
export function useKeepState<T>(pick: (state: KeepState) => T): T {
  return useStore(keepState, pick);
}

/** Says that the shelf has changed. */
export function shelfChanged(): void {
  keepState.setState(({ changes }) => ({ changes: changes + 1 }));
}
