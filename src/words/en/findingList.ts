import type { Finding } from '../../model/basket.ts';

/** The list of findings about a plan. */
export const findingListWords = {
  title: 'Findings',
  none: 'Nothing stands in the way of weaving it as planned.',
  row: (row: number) => `Row ${row}`,
  rows: (first: number, last: number) => `Rows ${first} to ${last}`,
  /** Such a word for the ear, before what it is said of. */
  before: (severity: string) => `${severity}: `,
  /** The word that stands for each severity, for eye and ear. */
  severity: {
    stop: 'Cannot be woven',
    warn: 'Look at this',
    note: 'Worth knowing',
  } satisfies Readonly<Record<Finding['severity'], string>>,
};
