/** Height: what a measured one says of the packing, and how many rows a wanted one takes. */
import { limits } from '../../plan/limits.ts';
import type { Plan } from '../../plan/schema.ts';
import type { Basket } from '../basket.ts';

/** A row's top over the table at the middle of the sides, mm: what a rule beside the basket reads. */
export function topOfRow({ rows }: Pick<Basket, 'rows'>, row: number): number {
  const read = rows[row - 1];
  if (!read) return Number.NaN;
  return read.heightSide + 0.5 * pitchOf(rows, row) * upright(read.lean);
}

/**
 * How much looser (over 1) or tighter the rows are packed than in `basket`, when the top of row `row`
 * stands `height` over the table. Only what the rows themselves rise is stretched: feet and the roll of
 * the base are as they are.
 */
export function packingFactor(
  { rows, plan }: Pick<Basket, 'rows' | 'plan'>,
  row: number,
  height: number,
): number {
  let rise = 0;
  for (let k = 1; k <= row; k++) rise += pitchOf(rows, k) * upright(rows[k - 1]?.lean ?? 0);
  const { least, most } = factorRange(plan);
  const factor = 1 + (height - topOfRow({ rows }, row)) / rise;
  return Number.isFinite(factor) ? Math.min(most, Math.max(least, factor)) : 1;
}

/** How far the packing of all bands can be scaled. */
function factorRange({ bands }: Plan): { readonly least: number; readonly most: number } {
  const packings = bands.map(({ packing }) => packing);
  return {
    least: limits.packing.least / Math.min(...packings),
    most: limits.packing.most / Math.max(...packings),
  };
}

/** Rows to add (below 0: to leave out) so that `basket` comes out nearest to `height`, mm. */
export function rowsToHeight(
  { rows, summary }: Pick<Basket, 'rows' | 'summary'>,
  height: number,
): number {
  const last = rows.length;
  const rise = pitchOf(rows, last) * upright(rows[last - 1]?.lean ?? 0);
  return rise > 0 ? Math.round((height - summary.height) / rise) : 0;
}

function pitchOf(rows: Basket['rows'], row: number): number {
  return (rows[row - 1]?.wall ?? 0) - (rows[row - 2]?.wall ?? 0);
}

/** Share of a row's pitch that goes up; never nothing, so that a flat row still counts. */
function upright(lean: number): number {
  return Math.max(0.1, Math.cos((lean * Math.PI) / 180));
}
