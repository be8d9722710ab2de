/**
 * A new base or other bands under the same design: the girth line keeps its proportions.
 *
 * Girths are absolute in a plan, since that is what a tape reads. So that a wider base does not
 * turn a straight wall into a shoulder, they follow the base girth, and the rows of the points
 * follow the row count, unless the maker holds them.
 */
import { baseGirth, baseSize } from './baseSize.ts';
import { rowCount } from './counts.ts';
import { legalGirth } from './edit.ts';
import { limits } from './limits.ts';
import { measuresOf, withMeasures } from './measures.ts';
import type { GirthPoint, Plan } from './schema.ts';

export interface Rescaling {
  /** The points keep their rows and girths where they can. Default: no. */
  readonly hold?: boolean;
}

/** `plan` on another base. The centre lift is brought under its share of the new base. */
export function changeBase(plan: Plan, base: Plan['base'], options: Rescaling = {}): Plan {
  const { length, width } = baseSize(base);
  const most = Math.min(length, width) * limits.centreLift.mostShare;
  const kept =
    base.kind === 'board' ? base : { ...base, centreLift: Math.min(base.centreLift, most) };
  return rescaled(plan, { ...plan, base: kept }, options);
}

/** `plan` with other bands. What was set or measured beyond the new last row is dropped. */
export function changeBands(plan: Plan, bands: Plan['bands'], options: Rescaling = {}): Plan {
  return rescaled(plan, { ...plan, bands }, options);
}

function rescaled(before: Plan, after: Plan, { hold = false }: Rescaling): Plan {
  const rows = rowCount(after);
  const wider = hold ? 1 : baseGirth(after.base) / baseGirth(before.base);
  const higher = hold ? 1 : rows / rowCount(before);
  const points = before.girthLine.points.map(({ row, girth }) => ({
    row: row * higher,
    girth: scaledGirth(girth, wider),
  }));
  const byHand: Record<string, number> = {};
  for (const [row, girth] of Object.entries(before.girthLine.rows)) {
    if (Number(row) <= rows) byHand[row] = scaledGirth(girth, wider);
  }
  const girthLine = { points: onRowsOfTheirOwn(points, rows), rows: byHand };
  return withMeasures({ ...after, girthLine }, measuresOf(after));
}

/**
 * Points on whole rows 1 … `rows`, no two on one. Where there are fewer rows than points, some
 * points go, evenly along the line.
 */
function onRowsOfTheirOwn(points: readonly GirthPoint[], rows: number): GirthPoint[] {
  const kept = Math.min(points.length, rows);
  const step = kept > 1 ? (points.length - 1) / (kept - 1) : 0;
  const first = kept > 1 ? 0 : points.length - 1;
  const spread: GirthPoint[] = [];
  for (let i = 0; i < kept; i++) {
    const point = points[Math.round(first + i * step)];
    if (!point) continue;
    const least = (spread.at(-1)?.row ?? 0) + 1;
    const most = rows - (kept - 1 - i);
    spread.push({ ...point, row: Math.min(Math.max(Math.round(point.row), least), most) });
  }
  return spread;
}

function scaledGirth(girth: number, factor: number): number {
  return factor === 1 ? girth : (legalGirth(girth * factor) ?? girth);
}
