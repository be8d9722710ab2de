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
      text:
        `A ${longest.part} is ${mm(longest.length)} long, more than the ${mm(limit)} that a strand ` +
        'is counted on for. Look out longer strands, or plan a lower wall.',
    },
  ];
};
