/** What can no longer be reached, in sentences, with the nearest that can. */
import type { Aimed } from '../../model/replan/replan.ts';
import { formatLength } from '../../plan/units.ts';
import type { BenchWork } from './benchWork.ts';
import { tellable } from './benchWork.ts';

/** A sentence for each aim that is out of reach. */
export function missedAims(work: BenchWork): string[] {
  const { course, plan, over, record } = work;
  const { rim, belly, back, from } = course.replan;
  const length = (at: Aimed, girth: number) =>
    formatLength(girth + (over[at.row] ?? 0), plan.display.unit);
  const missed: string[] = [];
  const say = (name: string, at: Aimed) => {
    if (Math.abs(at.aim - at.reached) < tellable) return;
    missed.push(
      `${name} of ${length(at, at.aim)} can no longer be reached; the nearest is ${length(at, at.reached)}.`,
    );
  };
  if (from < work.rows) say('The rim', rim);
  if (belly) say(`The belly at row ${belly.row}`, belly);
  if (record.backOver !== null && back !== null && back > from + record.backOver) {
    missed.push(`The plan can be met again at row ${back}, not before.`);
  }
  return missed;
}
