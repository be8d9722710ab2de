/** Whether a measured value can be right; asked at once, while the tape is still in the hand. */
import { replanWords } from '#words/replan.ts';
import { limits } from '../../plan/limits.ts';
import { mm } from '../finding/family.ts';

const says = replanWords.girth;

export interface Doubt {
  /** Nothing that a plan can hold; else it can be kept all the same. */
  readonly isImpossible: boolean;
  /** A question, lengths written as {mm:…}. */
  readonly text: string;
}

/** A tape that reads this share off what was expected is asked about. */
const far = 0.08;
/** From these shares on it is likely another thing that was measured, or half of it. */
const twice = 1.7;
const half = 0.6;

/**
 * What is doubtful about a tape girth, or null.
 *
 * @param expected tape girth the row was woven to, mm
 * @param least the shortest a row there can be, mm: the base girth less all that rows can pull in
 */
export function girthDoubt(
  tape: number,
  row: number,
  expected: number,
  least: number,
): Doubt | null {
  const { least: shortest, most: longest } = limits.girth;
  if (!(tape >= shortest && tape <= longest)) {
    const text = says.impossible(mm(tape), mm(shortest), mm(longest));
    return { isImpossible: true, text };
  }
  const share = tape / expected;
  if (share > twice) {
    return doubt(says.twice(mm(tape), times(share), mm(expected), row));
  }
  if (tape < least) {
    return doubt(says.tooShort(mm(tape), row, mm(least)));
  }
  if (share < half) {
    return doubt(says.half(mm(tape), times(share), mm(expected), row));
  }
  if (Math.abs(share - 1) > far) {
    return doubt(says.off(mm(Math.abs(tape - expected)), share > 1, row));
  }
  return null;
}

/** What is doubtful about a height, or null. `expected` is what the plan has there, mm. */
export function heightDoubt(height: number, row: number, expected: number): Doubt | null {
  const share = height / expected;
  if (!(height > 0 && height < limits.girth.most)) {
    return { isImpossible: true, text: replanWords.height.impossible(mm(height), row) };
  }
  if (share > 1.3 || share < 0.75) {
    return doubt(replanWords.height.off(mm(expected), row, mm(height)));
  }
  return null;
}

function doubt(text: string): Doubt {
  return { isImpossible: false, text };
}

function times(share: number): string {
  return share.toFixed(share < 1 ? 2 : 1);
}
