import { findingWords } from '#words/findings.ts';
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
          text: findingWords.notSettled(iterations, lastStep < 1 ? undefined : mm(lastStep)),
        },
      ];
