/** The studio of this page; `keepHere.ts` opens it with what was kept. */
import { useStore } from 'zustand';
import { demos } from '../plan/demo/demos.ts';
import { settler } from '../work/caller.ts';
import type { Studio } from './studio.ts';
import { studio } from './studio.ts';

/** The studio of the page itself. It settles nothing before it is restored. */
export const here = studio(demos[0].plan, settler, { waits: true });

/** What `pick` takes from the studio; the component is drawn anew when it changes. */
export function useStudio<T>(pick: (studio: Studio) => T): T {
  return useStore(here, pick);
}

/** The studio as it is now, for use outside of drawing. */
export function presentStudio(): Studio {
  return here.getState();
}
