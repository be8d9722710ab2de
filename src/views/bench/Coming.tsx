import { useMemo } from 'react';
import { benchWords } from '#words/bench.ts';
import { SeverityMark, severityBefore } from '../../charts/SeverityMark.tsx';
import { findingsAhead } from '../../model/replan/coming.ts';
import { withLengths } from '../../plan/lengthText.ts';
import type { BenchWork } from './benchWork.ts';
import { firstApart } from './benchWork.ts';
import { isOffPlan, offPlanText } from './offPlan.ts';

const words = benchWords.ahead;

/** How the basket stands, and what the rows to come have in store, in time to do something about it. */
export function Coming({ work }: { readonly work: BenchWork }) {
  const { table, course, plan } = work;
  const { from } = course.replan;
  const findings = useMemo(() => (table ? findingsAhead(table, from) : []), [table, from]);
  const isNew = firstApart(work) !== null;
  const nothing = isNew || course.isTaken ? words.nothingOfReplan : words.nothing;
  return (
    <section className="bench-card" aria-labelledby="coming-title">
      <h2 id="coming-title">{words.title}</h2>
      {from > 0 && isOffPlan(work) && <p>{offPlanText(work)}</p>}
      {isNew && <p>{course.isTaken ? words.ofNewReplan : words.ofReplan}</p>}
      {findings.length === 0 && <p className="soft">{table ? nothing : words.waiting}</p>}
      <ul className="coming">
        {findings.map((finding) => (
          <li key={`${finding.kind}-${finding.text}`} className={`finding-${finding.severity}`}>
            <SeverityMark severity={finding.severity} />
            <p>
              <strong className="unseen">{severityBefore(finding.severity)}</strong>
              {withLengths(finding.text, plan.display.unit)}
            </p>
          </li>
        ))}
      </ul>
    </section>
  );
}
