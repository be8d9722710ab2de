import { formatLength } from '../../plan/units.ts';
import type { BenchWork } from './benchWork.ts';
import { isReplanNew, replannedTape } from './benchWork.ts';
import { takeReplan } from './takeReplan.ts';

/** Says at the row itself that another girth would be better, with one press to take it. */
export function ReplanWaits({ work }: { readonly work: BenchWork }) {
  const { row } = work.record;
  if (row <= work.course.replan.from || !isReplanNew(work)) return null;
  const girth = formatLength(replannedTape(work, row), work.plan.display.unit);
  return (
    <div className="replan-waits">
      <span>
        {work.course.isTaken ? 'By a new replan' : 'By the replan'}, row {row} to{' '}
        <strong>{girth}</strong>
        <small>The large figure is {work.course.isTaken ? 'the last replan' : 'the plan'}’s.</small>
      </span>
      <button type="button" className="main-button" onClick={() => takeReplan(work)}>
        Take it
      </button>
    </div>
  );
}
