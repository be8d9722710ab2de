import { memo, useId } from 'react';
import { findingListWords as words } from '#words/findingList.ts';
import type { Basket, Finding } from '../model/basket.ts';
import { withLengths } from '../plan/lengthText.ts';
import type { Remedy } from '../plan/remedies.ts';
import { remedies } from '../plan/remedies.ts';
import type { Plan, Unit } from '../plan/schema.ts';
import { rowSpans } from './rowSpans.ts';
import { SeverityMark, severityWord } from './SeverityMark.tsx';
import type { ChangePlan } from './useGirthEdits.ts';
import './charts.css';

export interface FindingListProps {
  readonly basket: Pick<Basket, 'plan' | 'findings'>;
  readonly onRow: (row: number | null) => void;
  /** The present plan, which a remedy changes; the basket's own, which may be older, where left out. */
  readonly plan?: Plan;
  /** The plan at the moment a remedy is taken, where it may be newer than `plan`. */
  readonly present?: () => Plan;
  /** Default: `Findings`. */
  readonly title?: string;
  /** Left out where nothing can be changed: no remedies are offered. */
  readonly onChange?: ChangePlan;
}

const none: readonly Remedy[] = [];

const order = { stop: 0, warn: 1, note: 2 } as const;

/** What the settled basket says about its plan, the gravest first. */
export const FindingList = memo(function FindingList(props: FindingListProps) {
  const {
    basket,
    plan = basket.plan,
    present = () => plan,
    title = words.title,
    onRow,
    onChange,
  } = props;
  const titleId = useId();
  const { unit } = basket.plan.display;
  const findings = basket.findings.toSorted((a, b) => order[a.severity] - order[b.severity]);
  return (
    <section className="findings" aria-labelledby={titleId}>
      <h3 className="findings-title" id={titleId}>
        {title}
      </h3>
      {findings.length === 0 ? (
        <p className="findings-none">{words.none}</p>
      ) : (
        <ul className="findings-list">
          {findings.map((finding) => (
            <FindingItem
              key={`${finding.kind}-${finding.row}-${finding.text}`}
              finding={finding}
              unit={unit}
              onRow={onRow}
              remedies={onChange ? remedies(plan, finding) : none}
              onRemedy={({ key }) => {
                const now = remedies(present(), finding).find((one) => one.key === key);
                if (now) onChange?.(now.plan, now.act);
              }}
            />
          ))}
        </ul>
      )}
    </section>
  );
});

interface FindingItemProps {
  readonly finding: Finding;
  readonly unit: Unit;
  readonly onRow: (row: number | null) => void;
  readonly remedies: readonly Remedy[];
  readonly onRemedy: (remedy: Remedy) => void;
}

function FindingItem({ finding, unit, onRow, remedies: ways, onRemedy }: FindingItemProps) {
  const { severity, text, row, rows } = finding;
  const spans = rowSpans(row === null ? rows : [row, ...rows]);
  return (
    <li className={`finding finding-${severity}`}>
      <SeverityMark severity={severity} />
      <div>
        <strong className="finding-word">{severityWord[severity]}</strong>
        <p className="finding-text">{withLengths(text, unit)}</p>
        {spans.map(({ first, last }) => (
          <button
            key={first}
            type="button"
            className="finding-row"
            onClick={() => onRow(first)}
            onPointerEnter={() => onRow(first)}
            onFocus={() => onRow(first)}
          >
            {first === last ? words.row(first) : words.rows(first, last)}
          </button>
        ))}
        {ways.map((remedy) => (
          <button
            key={remedy.key}
            type="button"
            className="finding-remedy"
            onClick={() => onRemedy(remedy)}
          >
            {remedy.label}
          </button>
        ))}
      </div>
    </li>
  );
}
