/** Plans for the bench: the one on the table, and one with rows more or fewer. */
import { rowCount } from '../../plan/counts.ts';
import { legalGirth } from '../../plan/edit.ts';
import { limits } from '../../plan/limits.ts';
import type { Plan } from '../../plan/schema.ts';
import { girthLine } from '../girth/girthLine.ts';
import { monotoneCubic } from '../girth/monotone.ts';

/** `plan` with every row at its girth in `girths` (by row, [0] the base, mm). */
export function planWithGirths(plan: Plan, girths: ArrayLike<number>): Plan {
  const rows = Object.fromEntries(
    Array.from({ length: rowCount(plan) }, (_, index) => [
      `${index + 1}`,
      legalGirth(girths[index + 1] ?? Number.NaN) ?? limits.girth.least,
    ]),
  );
  return { ...plan, girthLine: { ...plan.girthLine, rows } };
}

/** `plan` with the packing of every band times `factor`, as far as packing goes. */
export function planWithPacking(plan: Plan, factor: number): Plan {
  if (factor === 1) return plan;
  const { least, most } = limits.packing;
  const bands = plan.bands.map((band) => ({
    ...band,
    packing: Math.min(most, Math.max(least, band.packing * factor)),
  }));
  return { ...plan, bands };
}

/** How many rows the plan can lose or gain after row `from`: they are those of its last band. */
export function spareRows(
  plan: Plan,
  from: number,
): { readonly least: number; readonly most: number } {
  const rows = rowCount(plan);
  const inBand = plan.bands.at(-1)?.rows ?? 1;
  return {
    least: -Math.max(0, Math.min(inBand - 1, rows - from - 2)),
    most: limits.rows.most - rows,
  };
}

/**
 * `plan` with `added` rows more (or fewer) at the top of its last band. Every row up to `from` keeps its
 * girth; what lies above runs through the same girths over the new number of rows.
 */
export function planWithRows(plan: Plan, from: number, added: number): Plan {
  if (added === 0) return plan;
  const before = girthLine(plan);
  const rows = rowCount(plan);
  const old = monotoneCubic([...before.keys()], before);
  const share = (rows - from) / (rows + added - from);
  const girths = Array.from({ length: rows + added + 1 }, (_, row) =>
    old(row <= from ? row : from + (row - from) * share),
  );
  const band = plan.bands.length - 1;
  const bands = plan.bands.map((one, index) =>
    index === band ? { ...one, rows: one.rows + added } : one,
  );
  const points = plan.girthLine.points
    .map(({ row, girth }) => ({
      row: row <= from ? row : Math.max(from + 1, Math.round(from + (row - from) / share)),
      girth,
    }))
    .filter(({ row }, index, all) => all.findIndex((other) => other.row === row) === index);
  return planWithGirths({ ...plan, bands, girthLine: { ...plan.girthLine, points } }, girths);
}
