import { benchWords } from '#words/bench.ts';
import { listWords } from '#words/lists.ts';
import { furthestOff } from '../../model/replan/furthestOff.ts';
import { formatLength, shownChange } from '../../plan/units.ts';
import { AimFields } from './AimFields.tsx';
import type { BenchWork } from './benchWork.ts';
import { isReplanNew, plannedTape, replannedTape, tellable } from './benchWork.ts';
import { LimitFields } from './LimitFields.tsx';
import { missedAims } from './missedAims.ts';
import { ReplanRows } from './ReplanRows.tsx';
import { leaveReplan, takeReplan } from './takeReplan.ts';

const words = benchWords.replan;

/** The rows to come as they could be, what that changes, and one press to take it or leave it. */
export function ReplanCard({ work }: { readonly work: BenchWork }) {
  const { course, rows, plan } = work;
  const { from } = course.replan;
  if (from >= rows) return null;
  const isNew = isReplanNew(work);
  const missed = missedAims(work);
  const further = isNew || course.isTaken ? furtherText(work) : null;
  return (
    <section className="bench-card replan" aria-labelledby="replan-title">
      <h2 id="replan-title">{words.title}</h2>
      <p className="replan-state">{stateText(work)}</p>
      {missed.map((sentence) => (
        <p key={sentence} className="replan-missed" role="status">
          {sentence}
        </p>
      ))}
      {further && <p className="replan-further">{further}</p>}
      <AimFields work={work} />
      <LimitFields work={work} />
      {(isNew || course.isTaken) && <ReplanRows work={work} />}
      <div className="replan-buttons">
        {isNew && (
          <button type="button" className="main-button" onClick={() => takeReplan(work)}>
            {words.take}
          </button>
        )}
        {course.isTaken && (
          <button type="button" onClick={leaveReplan}>
            {words.leave}
          </button>
        )}
        {!isNew && !course.isTaken && <p className="soft">{words.nothing(plan.name)}</p>}
      </div>
    </section>
  );
}

function stateText(work: BenchWork): string {
  const { course, plan } = work;
  const { from } = course.replan;
  if (from === 0) return words.begin;
  const off = shownOff(work, from);
  const by = formatLength(Math.abs(off), plan.display.unit);
  const apart = off < 0 ? words.rowTighter(from, by) : words.rowWider(from, by);
  const standing = Math.abs(off) < tellable ? words.rowAsPlanned(from) : apart;
  return course.isTaken ? listWords.sentences([standing, words.isTaken]) : standing;
}

/** How much wider row `row` is, woven or replanned, than planned, mm, as both are shown. */
function shownOff(work: BenchWork, row: number): number {
  return shownChange(plannedTape(work, row), replannedTape(work, row), work.plan.display.unit);
}

/** That the way back begins by leading away, where it does, so that nobody takes it for a mistake. */
function furtherText(work: BenchWork): string | null {
  const { planned, replan } = work.course;
  const furthest = furthestOff(planned, replan.girths, replan.from, tellable);
  if (!furthest) return null;
  const { row } = furthest;
  const off = shownOff(work, row);
  const by = formatLength(Math.abs(off), work.plan.display.unit);
  const told = off < 0 ? words.furtherTighter(row, by) : words.furtherWider(row, by);
  return listWords.sentences([told, words.whyFurther]);
}
