/** A weight to the ounce or the gram: more would say more than is known. */
export function weightText(grams: number, inOunces: boolean): string {
  return inOunces ? `${Math.round(grams / 28.349523)} oz` : `${Math.round(grams)} g`;
}
