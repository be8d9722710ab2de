/** Ways out of a finding that can be taken with one press: each a plan that is allowed. */
import { remedyWords } from '#words/remedies.ts';
import { baseEnds, endCount } from './counts.ts';
import type { Plan, Weave } from './schema.ts';
import { planSchema } from './schema.ts';
import { countFit } from './weaveFacts.ts';

export interface Remedy {
  /** Tells it from the others of its finding. */
  readonly key: string;
  /** What it does, as a button says it, and as it is called where it can be undone. */
  readonly label: string;
  readonly act: string;
  readonly plan: Plan;
}

/** What of a finding a remedy is chosen by (`Finding` in the model). */
export interface Found {
  readonly kind: string;
  readonly rows: readonly number[];
}

/**
 * Remedies of a finding in `plan`. For a count of ends that does not suit a weave: a stake split or added,
 * the odd end left out, or another weave in the bands that are named. None is offered that leaves more bands
 * than before, or as many, at odds with the count.
 */
export function remedies(plan: Plan, found: Found): readonly Remedy[] {
  if (found.kind !== 'count-of-ends') return [];
  const before = misfits(plan);
  return [...otherCounts(plan), ...otherWeaves(plan, new Set(found.rows))].filter(
    (remedy) => misfits(remedy.plan) < before && planSchema.safeParse(remedy.plan).success,
  );
}

/** Bands whose weave does not go with the count of ends. */
function misfits(plan: Plan): number {
  const ends = endCount(plan);
  return plan.bands.filter(({ weave }) => countFit(weave, ends) !== 'fits').length;
}

function otherCounts(plan: Plan): Remedy[] {
  const { base, oddEnd } = plan;
  const odd = (kind: Plan['oddEnd']['kind']): Plan => ({ ...plan, oddEnd: { ...oddEnd, kind } });
  const says = base.kind === 'wheel' ? remedyWords.spoke : remedyWords.stake;
  if (oddEnd.kind !== 'none') {
    const words = oddEnd.kind === 'split' ? says.leaveWhole : says.leaveOut;
    return [{ key: 'none', ...words, plan: odd('none') }];
  }
  const split: Remedy = { key: 'split', ...says.split, plan: odd('split') };
  if (base.kind === 'board') {
    const more = { ...plan, base: { ...base, ends: baseEnds(base) + 1 } };
    return [split, { key: 'slot', ...remedyWords.oneMoreInSlot, plan: more }];
  }
  return [split, { key: 'added', ...says.add, plan: odd('added') }];
}

/** Weaves to change to, nearest first. Twining would change the height of the wall, a twill its looks. */
const instead = ['chased', 'rounds', 'continuous'] as const satisfies readonly Weave[];

/** The bands that have a row in `rows` and are at odds with the count, all in one other weave. */
function otherWeaves(plan: Plan, rows: ReadonlySet<number>): Remedy[] {
  const ends = endCount(plan);
  let last = 0;
  const named = plan.bands.map((band) => {
    const first = last + 1;
    last += band.rows;
    const isNamed = Array.from({ length: band.rows }, (_, i) => first + i).some((row) =>
      rows.has(row),
    );
    return isNamed && countFit(band.weave, ends) !== 'fits';
  });
  return instead
    .filter((weave) => countFit(weave, ends) === 'fits')
    .map((weave) => ({
      key: weave,
      ...remedyWords.weave[weave],
      plan: {
        ...plan,
        bands: plan.bands.map((band, index) => (named[index] ? { ...band, weave } : band)),
      },
    }));
}
