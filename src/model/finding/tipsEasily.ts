import type { Find } from './family.ts';

/** Tilt that an empty basket should bear, degrees. Common practice, no source. */
const enough = 15;

/** A basket that falls over at a small push. */
export const tipsEasily: Find = ({ summary: { tipAngle } }) =>
  tipAngle >= enough
    ? []
    : [
        {
          kind: 'tips-easily',
          severity: 'warn',
          row: null,
          rows: [],
          value: tipAngle,
          limit: enough,
          text:
            `It tips over when tilted by ${tipAngle.toFixed(0)}°, empty; ${enough}° is the least to ` +
            'aim for. Make the base larger, the wall lower, or let the corners stand lower.',
        },
      ];
