/** What a plan adds up to: ends, rows, the band and the pitch of a row. */
import type { Band, Plan } from './schema.ts';
import { tightPitch } from './weaveFacts.ts';

/** Ends that the base gives: two for each stake that crosses it, one for each that starts in it. */
export function baseEnds(base: Plan['base']): number {
  if (base.kind === 'wheel') return 2 * base.spokes + (base.added?.ends ?? 0);
  if (base.kind === 'board') return base.ends;
  const fanned = base.kind === 'oval' ? 4 * base.fanned : 0;
  return 2 * (base.lengthwise + base.crosswise) + fanned;
}

/** Ends round the wall: those of the base, and one more where a stake is split or one added. */
export function endCount(plan: Pick<Plan, 'base' | 'oddEnd'>): number {
  return baseEnds(plan.base) + (plan.oddEnd.kind === 'none' ? 0 : 1);
}

/** Rows of all bands together. */
export function rowCount(plan: Pick<Plan, 'bands'>): number {
  return plan.bands.reduce((rows, band) => rows + band.rows, 0);
}

/** The band that row `row` (1 … rows) is woven in. */
export function bandOfRow(plan: Pick<Plan, 'bands'>, row: number): Band {
  let last = 0;
  for (const band of plan.bands) {
    last += band.rows;
    if (row >= 1 && row <= last) return band;
  }
  throw new RangeError(`row is ${row}, allowed 1 to ${last}`);
}

/** A weaver that is spliced on so few rows before the next band, or fewer, is a short one. */
const soon = 2;

/** Row soon after row `row` from which another band is woven; undefined where none is. */
export function nextBandSoon(plan: Pick<Plan, 'bands'>, row: number): number | undefined {
  let first = 1;
  const starts = plan.bands.map(({ rows }) => {
    first += rows;
    return first - rows;
  });
  return starts.find((start) => start > row && start <= row + soon);
}

/** How much wall, along a stake, row `row` takes up: what its weave takes butted tight, times the packing. */
export function rowPitch(plan: Pick<Plan, 'bands'>, row: number): number {
  const { weave, weaver, packing } = bandOfRow(plan, row);
  return packing * tightPitch(weave, weaver);
}
