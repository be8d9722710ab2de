import { sheetFrontWords } from '#words/sheetFront.ts';

/** A weight to the ounce or the gram: more would say more than is known. */
export function weightText(grams: number, inOunces: boolean): string {
  return inOunces
    ? sheetFrontWords.ounces(Math.round(grams / 28.349523))
    : sheetFrontWords.grams(Math.round(grams));
}
