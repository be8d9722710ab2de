import type { Plan } from '../plan/schema.ts';

/** Keys of a plan that say nothing of the basket's shape or look. */
const words: ReadonlySet<string> = new Set([
  'name',
  'notes',
  'display',
  'measured',
  'measuredAcross',
]);

/**
 * Whether two plans settle to the same basket: they differ at most in what is written about it.
 * Plans share their unchanged parts, so that most of them are told apart by identity.
 */
export function sameShape(one: Plan, other: Plan): boolean {
  const keys = Object.keys(one) as (keyof Plan)[];
  return keys.every(
    (key) =>
      words.has(key) ||
      one[key] === other[key] ||
      JSON.stringify(one[key]) === JSON.stringify(other[key]),
  );
}

/** All of a plan that its basket's shape and look hang on, as text: plans of the same text are of the same shape. */
export function shapeText(plan: Plan): string {
  const entries = Object.entries(plan).filter(([key]) => !words.has(key));
  return JSON.stringify(entries.toSorted(([one], [other]) => (one < other ? -1 : 1)));
}
