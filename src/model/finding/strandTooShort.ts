import { findingWords } from '#words/findings.ts';
import type { Find } from './family.ts';
import { mm } from './family.ts';

/** Stakes that are longer than the strands one can count on. */
export const strandTooShort: Find = ({ plan, cutList }) => {
  const limit = plan.allowances.usableStrand;
  const longest = cutList.reduce((most, part) => (part.length > most.length ? part : most));
  if (longest.length <= limit) return [];
  return [
    {
      kind: 'strand-too-short',
      severity: 'warn',
      row: null,
      rows: [],
      value: longest.length,
      limit,
      text: findingWords.strandTooShort(longest.part, mm(longest.length), mm(limit)),
    },
  ];
};
