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

/** What a girth line was before a run of changes of base and bands, and what it was drawn for. */
interface Origin {
  readonly girthLine: Plan['girthLine'];
  readonly baseGirth: number;
  readonly rows: number;
}

/**
 * Where rescaled girth lines came from. Each is taken from the first of its run and not from the last, so
 * that nothing is rounded twice, and a change that is taken back leaves every girth as it was.
 */
const origins = new WeakMap<Plan['girthLine'], Origin>();

function rescaled(before: Plan, after: Plan, { hold = false }: Rescaling): Plan {
  const rows = rowCount(after);
  const present = {
    girthLine: before.girthLine,
    baseGirth: baseGirth(before.base),
    rows: rowCount(before),
  };
  const origin = (hold ? undefined : origins.get(before.girthLine)) ?? present;
  const girthLine = hold ? onRows(present, 1, 1, rows) : drawnFor(origin, after.base, rows);
  if (!hold && girthLine !== origin.girthLine) origins.set(girthLine, origin);
  return withMeasures({ ...after, girthLine }, measuresOf(after));
}

function drawnFor(origin: Origin, base: Plan['base'], rows: number): Plan['girthLine'] {
  const wider = baseGirth(base) / origin.baseGirth;
  const higher = rows / origin.rows;
  if (wider === 1 && higher === 1) return origin.girthLine;
  return onRows(origin, wider, higher, rows);
}

function onRows(
  { girthLine }: Origin,
  wider: number,
  higher: number,
  rows: number,
): Plan['girthLine'] {
  const points = girthLine.points.map(({ row, girth }) => ({
    row: row * higher,
    girth: scaledGirth(girth, wider),
  }));
  const byHand: Record<string, number> = {};
  for (const [row, girth] of Object.entries(girthLine.rows)) {
    if (Number(row) <= rows) byHand[row] = scaledGirth(girth, wider);
  }
  return { points: onRowsOfTheirOwn(points, rows), rows: byHand };
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
