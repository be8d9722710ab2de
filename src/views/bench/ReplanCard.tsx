import { furthestOff } from '../../model/replan/furthestOff.ts';
import { formatLength } from '../../plan/units.ts';
import { AimFields } from './AimFields.tsx';
import type { BenchWork } from './benchWork.ts';
import { isReplanNew, plannedTape, replannedTape, tellable } from './benchWork.ts';
import { LimitFields } from './LimitFields.tsx';
import { missedAims } from './missedAims.ts';
import { ReplanRows } from './ReplanRows.tsx';
import { leaveReplan, takeReplan } from './takeReplan.ts';

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
      <h2 id="replan-title">The rows to come</h2>
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
            Take the replan
          </button>
        )}
        {course.isTaken && (
          <button type="button" onClick={leaveReplan}>
            Back to the old plan
          </button>
        )}
        {!isNew && !course.isTaken && (
          <p className="soft">Nothing to change for the {plan.name.toLowerCase()} so far.</p>
        )}
      </div>
    </section>
  );
}

function stateText(work: BenchWork): string {
  const { course, plan } = work;
  const { from } = course.replan;
  if (from === 0) return 'Measure a row, and the rest is worked out anew from there.';
  const off = replannedTape(work, from) - plannedTape(work, from);
  const by = formatLength(Math.abs(off), plan.display.unit);
  const now =
    Math.abs(off) < tellable ? 'as planned' : `${by} ${off < 0 ? 'tighter' : 'wider'} than planned`;
  const taken = course.isTaken ? ' You are weaving to a replan.' : '';
  return `Row ${from} is ${now}.${taken}`;
}

/** That the way back begins by leading away, where it does, so that nobody takes it for a mistake. */
function furtherText({ course, plan }: BenchWork): string | null {
  const { planned, replan } = course;
  const furthest = furthestOff(planned, replan.girths, replan.from, tellable);
  if (!furthest) return null;
  const { row, off } = furthest;
  const by = `${formatLength(Math.abs(off), plan.display.unit)} ${off < 0 ? 'tighter' : 'wider'}`;
  return (
    `It moves further off before it comes back: row ${row} is ${by} than planned, then it turns. ` +
    'The wall is still on its way out of the plan, and turning it gently takes some rows.'
  );
}
