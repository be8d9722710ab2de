import { findingWords } from '#words/findings.ts';
import type { Find } from './family.ts';
import { rocks } from './rocks.ts';

/** Tilt that an empty basket should bear, degrees. Common practice, no source. */
const enough = 15;

/** A basket that falls over at a small push. One that rocks is said to rock, and no more. */
export const tipsEasily: Find = (reading) => {
  const { tipAngle } = reading.summary;
  if (tipAngle >= enough || rocks(reading).length > 0) return [];
  return [
    {
      kind: 'tips-easily',
      severity: 'warn',
      row: null,
      rows: [],
      value: tipAngle,
      limit: enough,
      text: findingWords.tipsEasily(tipAngle.toFixed(0), enough),
    },
  ];
};
