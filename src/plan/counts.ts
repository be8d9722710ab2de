/** What a plan adds up to: ends, rows, the band and the pitch of a row. */
import type { Band, Plan } from './schema.ts';

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

/**
 * How much wall, along a stake, row `row` takes up: its weaver's width times the packing.
 *
 * A twined row is two strands crossing between the stakes, one over the other, so it takes two
 * thicknesses: 3.5 mm for #2 round (1.75 mm) butted tight, 3.7 mm at the usual packing. Twined
 * rows of #2 round in published patterns come to about 3.5–4 mm a row (docs/design-file.md).
 */
export function rowPitch(plan: Pick<Plan, 'bands'>, row: number): number {
  const { weave, weaver, packing } = bandOfRow(plan, row);
  return packing * (weave === 'twined' ? 2 * weaver.thickness : weaver.width);
}
