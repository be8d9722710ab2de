import { benchWords } from '#words/bench.ts';
import { listWords } from '#words/lists.ts';
import { AimFields } from './AimFields.tsx';
import type { BenchWork } from './benchWork.ts';
import { firstApart } from './benchWork.ts';
import { furtherText } from './furtherText.ts';
import { LimitFields } from './LimitFields.tsx';
import { missedAims } from './missedAims.ts';
import { offPlanText } from './offPlan.ts';
import { ReplanRows } from './ReplanRows.tsx';
import { leaveReplan, takeReplan } from './takeReplan.ts';

const words = benchWords.replan;

/** The rows to come as they could be, what that changes, and one press to take it or leave it. */
export function ReplanCard({ work }: { readonly work: BenchWork }) {
  const { course, rows, plan } = work;
  const { from } = course.replan;
  if (from >= rows) return null;
  const isNew = firstApart(work) !== null;
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
  if (work.course.replan.from === 0) return words.begin;
  const standing = offPlanText(work);
  return work.course.isTaken ? listWords.sentences([standing, words.isTaken]) : standing;
}
