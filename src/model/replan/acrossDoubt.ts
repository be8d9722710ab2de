/** Whether a length or a width measured across a row can be right. */
import { limits } from '../../plan/limits.ts';
import { mm } from '../finding/family.ts';
import type { Doubt } from './doubt.ts';

export interface AcrossAt {
  readonly row: number;
  readonly which: 'length' | 'width';
  /** What the settled shape has there, mm outside. */
  readonly expected: number;
  /** Tape girth of the row, measured or woven to, mm. */
  readonly girth: number;
  /** The other way across, where it was measured, mm. */
  readonly other: number | undefined;
}

/** A tape and a rule disagree by this share before it is asked about. */
const slack = 0.015;
/** And so much may a basket be pressed out of the shape it settles to. */
const far = 0.2;

/**
 * What is doubtful about a length or width, or null. A closed loop that is nowhere hollow, `a` by `b`
 * across, is at most 2(a + b) round (its frame) and at least twice the frame's diagonal; one that is `a`
 * across at all is at least 2a round.
 */
export function acrossDoubt(value: number, at: AcrossAt): Doubt | null {
  const { least, most } = limits.across;
  const { row, which, girth, other, expected } = at;
  if (!(value >= least && value <= most)) {
    const text = `${mm(value)} cannot be: across a row is ${mm(least)} to ${mm(most)}.`;
    return { isImpossible: true, text };
  }
  if (2 * value > girth * (1 + slack)) {
    return doubt(
      `Row ${row} is ${mm(girth)} round, so no way across it is more than half of that, ` +
        `${mm(girth / 2)}. Is ${mm(value)} the ${which}?`,
    );
  }
  if (other !== undefined) {
    const [shortest, longest] = [2 * Math.hypot(value, other), 2 * (value + other)];
    if (girth > longest * (1 + slack) || girth < shortest * (1 - slack)) {
      return doubt(
        `${mm(value)} by ${mm(other)} is between ${mm(shortest)} and ${mm(longest)} round, and row ` +
          `${row} is ${mm(girth)}. Measure once more, outside and level?`,
      );
    }
  }
  if (Math.abs(value / expected - 1) > far) {
    const way = value > expected ? 'more' : 'less';
    return doubt(
      `${mm(Math.abs(value - expected))} ${way} than the ${mm(expected)} that row ${row} settles to. ` +
        'Measured outside, at the same row?',
    );
  }
  return null;
}

function doubt(text: string): Doubt {
  return { isImpossible: false, text };
}
