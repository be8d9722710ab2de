/** How far the last woven row is off its plan, in a sentence. */
import { benchWords } from '#words/bench.ts';
import { formatLength } from '../../plan/units.ts';
import type { BenchWork } from './benchWork.ts';
import { shownOff, tellable } from './benchWork.ts';

const words = benchWords.replan;

/** Whether a tape tells the last woven row from the plan. */
export function isOffPlan(work: BenchWork): boolean {
  return Math.abs(shownOff(work, work.course.replan.from)) >= tellable;
}

/** `Row 12 is 1/8 in wider than planned.` A row that nobody measured is said to be taken so. */
export function offPlanText(work: BenchWork): string {
  const { from } = work.course.replan;
  const off = shownOff(work, from);
  const by = formatLength(Math.abs(off), work.plan.display.unit);
  const isMeasured = work.record.girths[from] !== undefined;
  if (!isOffPlan(work)) return (isMeasured ? words.rowAsPlanned : words.rowTakenAsPlanned)(from);
  if (off < 0) return (isMeasured ? words.rowTighter : words.rowTakenTighter)(from, by);
  return (isMeasured ? words.rowWider : words.rowTakenWider)(from, by);
}
