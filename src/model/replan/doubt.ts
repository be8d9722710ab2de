/** Whether a measured value can be right; asked at once, while the tape is still in the hand. */
import { limits } from '../../plan/limits.ts';
import { mm } from '../finding/family.ts';

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
 * @param least the shortest a row there can be, mm: the base girth less all that rows can draw in
 */
export function girthDoubt(
  tape: number,
  row: number,
  expected: number,
  least: number,
): Doubt | null {
  const { least: shortest, most: longest } = limits.girth;
  if (!(tape >= shortest && tape <= longest)) {
    const text = `${mm(tape)} cannot be: a girth is ${mm(shortest)} to ${mm(longest)}.`;
    return { isImpossible: true, text };
  }
  const share = tape / expected;
  if (share > twice) {
    return doubt(
      `${mm(tape)} is ${times(share)} the ${mm(expected)} of row ${row}. Was the tape round once?`,
    );
  }
  if (tape < least) {
    return doubt(
      `${mm(tape)} is shorter than the base allows: even drawn in all the way, row ${row} would ` +
        `measure ${mm(least)}. Is it the whole way round?`,
    );
  }
  if (share < half) {
    return doubt(`${mm(tape)} is ${times(share)} the ${mm(expected)} of row ${row}. Half the way?`);
  }
  if (Math.abs(share - 1) > far) {
    const way = share > 1 ? 'more' : 'less';
    const by = mm(Math.abs(tape - expected));
    return doubt(`${by} ${way} than row ${row} was to have. Measure once more?`);
  }
  return null;
}

/** What is doubtful about a height, or null. `expected` is what the plan has there, mm. */
export function heightDoubt(height: number, row: number, expected: number): Doubt | null {
  const share = height / expected;
  if (!(height > 0 && height < limits.girth.most)) {
    return { isImpossible: true, text: `${mm(height)} cannot be the height of row ${row}.` };
  }
  if (share > 1.3 || share < 0.75) {
    return doubt(
      `The plan has ${mm(expected)} at the top of row ${row}, and packing cannot make ${mm(height)} ` +
        'of it. Was it measured from the table, at the middle of a side?',
    );
  }
  return null;
}

function doubt(text: string): Doubt {
  return { isImpossible: false, text };
}

function times(share: number): string {
  return `${share.toFixed(share < 1 ? 2 : 1)} times`;
}
