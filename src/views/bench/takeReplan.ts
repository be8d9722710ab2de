import { benchWords } from '#words/bench.ts';
import { withChange } from '../../keep/benchBook.ts';
import { changeBenchPage } from '../../keep/benchHere.ts';
import type { BenchWork } from './benchWork.ts';

/** Weaves to the replan from now on; the plan itself stays as it is. */
export function takeReplan({ course }: BenchWork): void {
  const taken = [...course.replan.girths];
  changeBenchPage((page) => withChange(page, { taken }), benchWords.steps.replanTaken);
}

/** Weaves to the plan again. */
export function leaveReplan(): void {
  changeBenchPage((page) => withChange(page, { taken: null }), benchWords.steps.replanLeft);
}
