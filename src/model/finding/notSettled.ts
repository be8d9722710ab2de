import type { Find } from './family.ts';
import { mm } from './family.ts';

/** The work allowed was spent before the shape came to rest. */
export const notSettled: Find = ({ settling: { converged, lastStep, iterations } }) =>
  converged
    ? []
    : [
        {
          kind: 'not-settled',
          severity: 'warn',
          row: null,
          rows: [],
          value: lastStep,
          limit: 0,
          text:
            `The shape had not come to rest after ${iterations} steps ` +
            `(${lastStep < 1 ? 'it was still moving a little' : `the last one moved it by ${mm(lastStep)}`}): take its figures as rough. A gentler girth line settles.`,
        },
      ];
