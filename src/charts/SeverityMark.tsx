import { findingListWords } from '#words/findingList.ts';
import type { Finding } from '../model/basket.ts';

export type Severity = Finding['severity'];

/** The word that stands for each severity, for eye and ear. */
export const severityWord: Readonly<Record<Severity, string>> = findingListWords.severity;

/** The same for the ear, before what it is said of. */
export function severityBefore(severity: Severity): string {
  return findingListWords.before(severityWord[severity]);
}

const outlines: Readonly<Record<Severity, string>> = {
  stop: 'M5 1h6l4 4v6l-4 4H5l-4-4V5z',
  warn: 'M8 1.5 15.2 14.5H.8z',
  note: 'M8 1a7 7 0 1 1 0 14A7 7 0 0 1 8 1z',
};

const signs: Readonly<Record<Severity, string>> = {
  stop: 'M4.8 8h6.4',
  warn: 'M8 6.2v4M8 12.2v.3',
  note: 'M8 4.2v.3M8 7v4.8',
};

/** A shape of its own for each severity, so that colour is not needed: octagon, triangle, disc. */
export function SeverityMark({ severity }: { readonly severity: Severity }) {
  return (
    <svg className={`severity severity-${severity}`} viewBox="0 0 16 16" aria-hidden="true">
      <path className="severity-shape" d={outlines[severity]} />
      <path className="severity-sign" d={signs[severity]} />
    </svg>
  );
}
