import type { Basket, Finding } from '../model/basket.ts';
import { withLengths } from '../plan/lengthText.ts';
import type { Unit } from '../plan/schema.ts';
import { rowSpans } from './rowSpans.ts';
import { SeverityMark, severityWord } from './SeverityMark.tsx';
import './charts.css';

export interface FindingListProps {
  readonly basket: Pick<Basket, 'plan' | 'findings'>;
  readonly onRow: (row: number | null) => void;
}

const order = { stop: 0, warn: 1, note: 2 } as const;

/** What the settled basket says about its plan, the gravest first. */
export function FindingList({ basket, onRow }: FindingListProps) {
  const { unit } = basket.plan.display;
  const findings = basket.findings.toSorted((a, b) => order[a.severity] - order[b.severity]);
  return (
    <section className="findings" aria-labelledby="findings-title">
      <h3 className="findings-title" id="findings-title">
        Findings
      </h3>
      {findings.length === 0 ? (
        <p className="findings-none">Nothing stands in the way of weaving it as planned.</p>
      ) : (
        <ul className="findings-list">
          {findings.map((finding) => (
            <FindingItem
              key={`${finding.kind}-${finding.row}-${finding.text}`}
              finding={finding}
              unit={unit}
              onRow={onRow}
            />
          ))}
        </ul>
      )}
    </section>
  );
}

interface FindingItemProps {
  readonly finding: Finding;
  readonly unit: Unit;
  readonly onRow: (row: number | null) => void;
}

function FindingItem({ finding, unit, onRow }: FindingItemProps) {
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
            {first === last ? `Row ${first}` : `Rows ${first} to ${last}`}
          </button>
        ))}
      </div>
    </li>
  );
}
