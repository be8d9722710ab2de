/**
 * Small edits of the girth line, plan to plan. Whatever numbers come in, a valid plan stays valid:
 * they are brought inside what is allowed, and a number that is none leaves the plan as it was.
 */
import { rowCount } from './counts.ts';
import { limits } from './limits.ts';
import type { GirthPoint, Plan } from './schema.ts';

/** Moves point `index`; it stays between its neighbours, each on a row of its own. */
export function movePoint(plan: Plan, index: number, to: GirthPoint): Plan {
  const { points } = plan.girthLine;
  const point = points[index];
  if (!point) return plan;
  const least = (points[index - 1]?.row ?? 0) + 1;
  const most = (points[index + 1]?.row ?? rowCount(plan) + 1) - 1;
  const moved = {
    row: Number.isFinite(to.row) ? clamped(Math.round(to.row), least, most) : point.row,
    girth: legalGirth(to.girth) ?? point.girth,
  };
  return withPoints(plan, points.with(index, moved));
}

/** Adds a point; on a row that has one already, that point gets the new girth. */
export function addPoint(plan: Plan, at: GirthPoint): Plan {
  const { points } = plan.girthLine;
  const girth = legalGirth(at.girth);
  if (girth === undefined || !Number.isFinite(at.row)) return plan;
  const row = clamped(Math.round(at.row), 1, rowCount(plan));
  const others = points.filter((point) => point.row !== row);
  if (others.length === limits.points.most) return plan;
  return withPoints(
    plan,
    [...others, { row, girth }].toSorted((one, other) => one.row - other.row),
  );
}

/** Takes point `index` away; the last one stays. */
export function removePoint(plan: Plan, index: number): Plan {
  const { points } = plan.girthLine;
  if (!points[index] || points.length === limits.points.least) return plan;
  return withPoints(plan, points.toSpliced(index, 1));
}

/** Sets one row by hand; it overrules the points. A row that there is not leaves the plan as it was. */
export function setRowByHand(plan: Plan, row: number, girth: number): Plan {
  const legal = legalGirth(girth);
  if (legal === undefined || !Number.isInteger(row) || row < 1 || row > rowCount(plan)) return plan;
  return withRows(plan, { ...plan.girthLine.rows, [row]: legal });
}

/** Gives a row set by hand back to the points. */
export function clearRow(plan: Plan, row: number): Plan {
  const { [row]: cleared, ...others } = plan.girthLine.rows;
  return cleared === undefined ? plan : withRows(plan, others);
}

/** `girth` brought inside the limits; `undefined` if it is no number. */
export function legalGirth(girth: number): number | undefined {
  return Number.isFinite(girth) ? clamped(girth, limits.girth.least, limits.girth.most) : undefined;
}

function withPoints(plan: Plan, points: Plan['girthLine']['points']): Plan {
  return { ...plan, girthLine: { ...plan.girthLine, points } };
}

function withRows(plan: Plan, rows: Plan['girthLine']['rows']): Plan {
  return { ...plan, girthLine: { ...plan.girthLine, rows } };
}

function clamped(value: number, least: number, most: number): number {
  return Math.min(Math.max(value, least), most);
}
