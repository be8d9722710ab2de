/** The basket at the bench: plan, what was measured and what is aimed at, in; the rows to come, out. */
import { rowCount } from '../../plan/counts.ts';
import type { Plan } from '../../plan/schema.ts';
import { girthLine } from '../girth/girthLine.ts';
import type { PullLimits } from './pullLimits.ts';
import { mostChanges } from './pullLimits.ts';
import type { Replan } from './replan.ts';
import { replan } from './replan.ts';
import { planWithGirths, planWithPacking, planWithRows, spareRows } from './tablePlan.ts';
import type { GirthByRow } from './woven.ts';
import { measuredRows, wovenGirths } from './woven.ts';

export interface Bench {
  readonly plan: Plan;
  /** Rows that are woven. */
  readonly done: number;
  /** Tape girth by row, mm. */
  readonly measured: GirthByRow;
  /** Rows to take to come back to the plan; null for all that are left. */
  readonly backOver: number | null;
  /** Whether the belly's girth matters while it is ahead. */
  readonly keepsBelly: boolean;
  /** Tape girth of the rim, mm; null for the plan's. */
  readonly rim: number | null;
  /** How far the rows to come may go; null for the usual. */
  readonly limits: PullLimits | null;
  /** Rows added at the top (below 0: left out), and the last row that was woven then. */
  readonly added: { readonly from: number; readonly rows: number } | null;
  /** Girths that were taken over from an earlier replan, by row, mm in the middle of the wall. */
  readonly taken: readonly number[] | null;
  /** How much looser the rows are packed than planned. */
  readonly packing: number;
  /** Tape girth less girth in the middle of the wall, by row, mm (see `tapeOver`): on the table, and as planned. */
  readonly over: ArrayLike<number>;
  readonly plannedOver: ArrayLike<number>;
}

export interface BenchCourse {
  /** The plan with its rows and its packing as they are at the bench. */
  readonly laid: Plan;
  /** Girth by row of the old plan, and of what is being woven to, mm in the middle of the wall. */
  readonly planned: Float64Array;
  readonly course: Float64Array;
  readonly isTaken: boolean;
  readonly replan: Replan;
  /** The row that the tape finds widest in the plan, where it lies ahead; else null. */
  readonly belly: number | null;
  /** The basket on the table: woven rows as woven, rows to come as replanned. */
  readonly table: Plan;
}

/** Everything about the rows to come. */
export function atTheBench(bench: Bench): BenchCourse {
  const { plan, measured, over, added } = bench;
  const laid = planWithPacking(withAdded(plan, added), bench.packing);
  const planned = girthLine(laid);
  const rows = rowCount(laid);
  const isTaken = bench.taken?.length === rows + 1;
  const course = isTaken && bench.taken ? Float64Array.from(bench.taken) : planned;
  const done = Math.min(rows, Math.max(bench.done, measuredRows(measured).at(-1) ?? 0));
  const belly = bellyRow(planned, bench.plannedOver, done);
  const next = replan(
    planned,
    wovenGirths(course, measured, over, done),
    mostChanges(laid, planned, bench.limits ?? undefined),
    {
      backBy: bench.backOver === null ? rows : Math.min(rows, done + bench.backOver),
      belly: bench.keepsBelly ? belly : null,
      rim: bench.rim === null ? null : bench.rim - (over[rows] ?? 0),
    },
  );
  const table = planWithGirths(laid, next.girths);
  return { laid, planned, course, isTaken, replan: next, belly, table };
}

function withAdded(plan: Plan, added: Bench['added']): Plan {
  if (!added) return plan;
  const { least, most } = spareRows(plan, added.from);
  return planWithRows(plan, added.from, Math.min(most, Math.max(least, added.rows)));
}

/**
 * The belly, where it lies after `done` and before the rim: the widest row by the tape, as the summary of a
 * settled basket has it. In the middle of the wall another row may be the widest.
 */
function bellyRow(planned: Float64Array, over: ArrayLike<number>, done: number): number | null {
  const tape = planned.map((girth, row) => girth + (over[row] ?? 0));
  const row = tape.indexOf(Math.max(...tape));
  return row > done && row < planned.length - 1 ? row : null;
}
