/** What can no longer be reached, in sentences, with the nearest that can. */
import { benchWords } from '#words/bench.ts';
import type { Aimed } from '../../model/replan/replan.ts';
import { formatLength } from '../../plan/units.ts';
import type { BenchWork } from './benchWork.ts';
import { tellable } from './benchWork.ts';

const words = benchWords.missed;

/** A sentence for each aim that is out of reach. */
export function missedAims(work: BenchWork): string[] {
  const { course, plan, over, record } = work;
  const { rim, belly, back, from } = course.replan;
  const length = (at: Aimed, girth: number) =>
    formatLength(girth + (over[at.row] ?? 0), plan.display.unit);
  const missed: string[] = [];
  const say = (at: Aimed, sentence: (aim: string, nearest: string) => string) => {
    if (Math.abs(at.aim - at.reached) < tellable) return;
    const [aim, nearest] = [length(at, at.aim), length(at, at.reached)];
    if (aim !== nearest) missed.push(sentence(aim, nearest));
  };
  if (from < work.rows) say(rim, words.rim);
  if (belly) say(belly, (aim, nearest) => words.belly(belly.row, aim, nearest));
  if (record.backOver !== null && back !== null && back > from + record.backOver) {
    missed.push(words.plan(back));
  }
  return missed;
}
