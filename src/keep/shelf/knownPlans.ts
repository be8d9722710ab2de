/** Which revisions of the shelf a tab knows, and on which of them what it has at hand was made. */
import type { Plan } from '../../plan/schema.ts';
import { isSame } from './isSame.ts';

export interface KnownPlans {
  /** The revision that the plan at hand was made on: 0 for another one; undefined if it is not on the shelf. */
  revisionOf(id: string): number | undefined;
  /** `id` is on the shelf as `revision`, with what is at hand or, where told, with `plan`. */
  set(id: string, revision: number, plan?: Plan): void;
  forget(id: string): void;
  /** Another plan has taken the place of `left`, as by opening it, undo and redo. */
  came(left: At, now: At): void;
}

interface At {
  readonly id: string;
  readonly plan: Plan;
}

/** What is known at first: revisions by id, and the plans they have. */
export function knownPlans(
  revisions: ReadonlyMap<string, number> = new Map(),
  plans: ReadonlyMap<string, Plan> = new Map(),
): KnownPlans {
  const known = new Map(revisions);
  /** Each plan as it was left, or as it was read from the shelf since. */
  const asLeft = new Map(plans);
  /** At hand in a state from before a change that this tab only heard of. */
  const outdated = new Set<string>();
  return {
    revisionOf: (id) => (outdated.has(id) ? 0 : known.get(id)),
    set(id, revision, plan) {
      known.set(id, revision);
      outdated.delete(id);
      if (plan) asLeft.set(id, plan);
    },
    forget(id) {
      known.delete(id);
      outdated.delete(id);
      asLeft.delete(id);
    },
    came(left, now) {
      if (!outdated.has(left.id)) asLeft.set(left.id, left.plan);
      if (!known.has(now.id)) return;
      const last = asLeft.get(now.id);
      // undoing past the opening of a plan must not put an old state over what the shelf has
      if (last && isSame(last, now.plan)) outdated.delete(now.id);
      else outdated.add(now.id);
    },
  };
}
