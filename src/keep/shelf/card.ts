import type { Plan } from '../../plan/schema.ts';
import type { Card } from './records.ts';

const mostNotes = 400;

/** The card of a plan that is new to the shelf at `now`, ms since 1970. */
export function cardOf(id: string, plan: Plan, now: number): Card {
  return {
    id,
    name: plan.name,
    notes: plan.notes.slice(0, mostNotes),
    made: now,
    updated: now,
    revision: 1,
    versioned: 0,
    thumbnail: null,
  };
}
