/**
 * Plain sentences with lengths in them: `{mm:12.3}` stands for 12.3 mm until a unit is known, and `{mm:12.3-14}`
 * for what there is between two lengths as both are shown.
 */
import { unitWords } from '#words/units.ts';
import type { Unit } from './schema.ts';
import { formatLength, leastShown, shownChange, shownLength } from './units.ts';

const token = /\{mm:(-?\d+(?:\.\d+)?(?:e[+-]?\d+)?)(?:-(\d+(?:\.\d+)?))?\}/gi;

/**
 * `text` with every `{mm:…}` written as a length in `unit`, its unit included. A length too short for the
 * unit is told as less than the least that it shows: it is not 0.
 */
export function withLengths(text: string, unit: Unit): string {
  return text.replace(token, (_whole, first: string, second?: string) => {
    const one = Number(first);
    const length = second === undefined ? one : Math.abs(shownChange(one, Number(second), unit));
    return isUnderLeast(length, unit)
      ? unitWords.lessThan(formatLength(leastShown(unit), unit))
      : formatLength(length, unit);
  });
}

function isUnderLeast(length: number, unit: Unit): boolean {
  return length > 0 && shownLength(length, unit) === 0;
}
