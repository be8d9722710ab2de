import { useMemo } from 'react';
import { benchWords } from '#words/bench.ts';
import { SeverityMark, severityBefore } from '../../charts/SeverityMark.tsx';
import { findingsAhead } from '../../model/replan/coming.ts';
import { withLengths } from '../../plan/lengthText.ts';
import type { BenchWork } from './benchWork.ts';

const words = benchWords.ahead;

/** What the rows to come have in store, in time to do something about it. */
export function Coming({ work }: { readonly work: BenchWork }) {
  const { table, course, plan } = work;
  const { from } = course.replan;
  const findings = useMemo(() => (table ? findingsAhead(table, from) : []), [table, from]);
  return (
    <section className="bench-card" aria-labelledby="coming-title">
      <h2 id="coming-title">{words.title}</h2>
      {findings.length === 0 && <p className="soft">{table ? words.nothing : words.waiting}</p>}
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
