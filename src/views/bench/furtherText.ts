import { benchWords } from '#words/bench.ts';
import { listWords } from '#words/lists.ts';
import { furthestOff } from '../../model/replan/furthestOff.ts';
import { formatLength } from '../../plan/units.ts';
import type { BenchWork } from './benchWork.ts';
import { shownOff, tellable } from './benchWork.ts';

const words = benchWords.replan;

/**
 * That the way back begins by leading away, so that nobody takes it for a mistake; null where it does not,
 * or by less than the figures show.
 */
export function furtherText(work: BenchWork): string | null {
  const { planned, replan } = work.course;
  const furthest = furthestOff(planned, replan.girths, replan.from, tellable);
  if (!furthest) return null;
  const { row } = furthest;
  const off = shownOff(work, row);
  if (Math.abs(off) < tellable) return null;
  const by = formatLength(Math.abs(off), work.plan.display.unit);
  const told = off < 0 ? words.furtherTighter(row, by) : words.furtherWider(row, by);
  return listWords.sentences([told, words.whyFurther]);
}
