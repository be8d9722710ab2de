/** Several keepers save in one page: that one of them can again does not mean that the others can. */
import type { NotKept } from './keepState.ts';

export interface Refusals {
  /** Takes note of why `keeper` cannot save, or (null) that it can. Gives why something is not kept, or null. */
  hear(keeper: string, why: NotKept | null): NotKept | null;
}

/** What keepers have told of refusals, none at first. */
export function refusals(): Refusals {
  const heard = new Map<string, NotKept>();
  return {
    hear(keeper, why) {
      heard.delete(keeper);
      if (why !== null) heard.set(keeper, why);
      return [...heard.values()].at(-1) ?? null;
    },
  };
}
