/** What the bench works with, and the tape girths read off it. */
import type { BenchPage } from '../../keep/benchBook.ts';
import type { BenchRecord } from '../../keep/benchRecord.ts';
import type { Basket } from '../../model/basket.ts';
import type { BenchCourse } from '../../model/replan/atTheBench.ts';
import type { Plan } from '../../plan/schema.ts';
import { shownChange } from '../../plan/units.ts';

export interface BenchWork {
  readonly plan: Plan;
  readonly page: BenchPage;
  readonly record: BenchRecord;
  /** False where the browser keeps nothing. */
  readonly isKept: boolean;
  /** The basket as planned, and the one on the table once it has settled. */
  readonly planBasket: Basket;
  readonly table: Basket | null;
  readonly problem: string | null;
  readonly course: BenchCourse;
  /** Whether the table's shape is settled and refined to the end, so that no figure moves any more. */
  readonly isAtRest: boolean;
  /** Rows there are, with those added. */
  readonly rows: number;
  /** What the tape reads over the girth, by row, mm: on the table, and as planned. */
  readonly over: Float64Array;
  readonly plannedOver: Float64Array;
}

/** The same numbers over `length`; the last one stands for all that follow. */
export function padded(values: Float64Array, length: number): Float64Array {
  return Float64Array.from({ length }, (_, index) => values[index] ?? values.at(-1) ?? 0);
}

/** Tape girth to weave row `row` to, mm. */
export function targetTape({ course, over, plannedOver }: BenchWork, row: number): number {
  const surplus = course.isTaken ? over : plannedOver;
  return (course.course[row] ?? Number.NaN) + (surplus[row] ?? 0);
}

/** Tape girth of row `row` in the old plan, mm. */
export function plannedTape({ course, plannedOver }: BenchWork, row: number): number {
  return (course.planned[row] ?? Number.NaN) + (plannedOver[row] ?? 0);
}

/** Tape girth of row `row` as woven, or as the replan has it, mm. */
export function replannedTape({ course, over, record }: BenchWork, row: number): number {
  const measured = row <= course.replan.from ? record.girths[row] : undefined;
  return measured ?? (course.replan.girths[row] ?? Number.NaN) + (over[row] ?? 0);
}

/** How much wider row `row` is, woven or replanned, than planned, mm, as both are shown. */
export function shownOff(work: BenchWork, row: number): number {
  return shownChange(plannedTape(work, row), replannedTape(work, row), work.plan.display.unit);
}

/** How much wider than the row below it row `row` is to be at a tape girth of `target` mm, mm, as both are shown. */
export function changeOf(
  work: BenchWork,
  row: number,
  target: number = targetTape(work, row),
): number {
  const { unit } = work.plan.display;
  const before = row - 1;
  if (before === 0) {
    const first = work.planBasket.rows[0];
    return shownChange((first?.tapeGirth ?? target) - (first?.change ?? 0), target, unit);
  }
  const isWoven = before <= work.course.replan.from;
  return shownChange((isWoven ? replannedTape : targetTape)(work, before), target, unit);
}

/** The first row to come that the replan has at another girth than what is being woven to; null where there is none. */
export function firstApart(work: BenchWork): number | null {
  for (let row = work.course.replan.from + 1; row <= work.rows; row++) {
    if (isRowApart(work, row)) return row;
  }
  return null;
}

/** Whether the replan has row `row`, which is to come, at a girth that tape and figures tell from what is being woven to. */
export function isRowApart(work: BenchWork, row: number): boolean {
  if (row <= work.course.replan.from || row > work.rows) return false;
  const [target, replanned] = [targetTape(work, row), replannedTape(work, row)];
  const shown = shownChange(target, replanned, work.plan.display.unit);
  return Math.abs(replanned - target) > tellable && shown !== 0;
}

/** A tape shows no less than this, mm. */
export const tellable = 0.75;
