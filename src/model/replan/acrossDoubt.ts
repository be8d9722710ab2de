/** Whether a length or a width measured across a row can be right. */
import { replanWords } from '#words/replan.ts';
import { limits } from '../../plan/limits.ts';
import { mm } from '../finding/family.ts';
import type { Doubt } from './doubt.ts';

const says = replanWords.across;

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
    const text = says.impossible(mm(value), mm(least), mm(most));
    return { isImpossible: true, text };
  }
  if (2 * value > girth * (1 + slack)) {
    return doubt(says.tooLong[which](row, mm(girth), mm(girth / 2), mm(value)));
  }
  if (other !== undefined) {
    const [shortest, longest] = [2 * Math.hypot(value, other), 2 * (value + other)];
    if (girth > longest * (1 + slack) || girth < shortest * (1 - slack)) {
      return doubt(
        says.noSuchLoop({
          size: mm(value),
          other: mm(other),
          shortest: mm(shortest),
          longest: mm(longest),
          row,
          girth: mm(girth),
        }),
      );
    }
  }
  if (Math.abs(value / expected - 1) > far) {
    return doubt(says.off(mm(Math.abs(value - expected)), value > expected, mm(expected), row));
  }
  return null;
}

function doubt(text: string): Doubt {
  return { isImpossible: false, text };
}
