/**
 * Where the figures of `strandSizes.ts` come from: the title of a page of the trade, `computed` (an inch is
 * 25.4 mm; a half round is half a circle), or `from memory`: coils differ, 10 % and more. Nobody is shown
 * them; titles stand as their pages have them, in whatever language.
 */

/** Pages read, by their number in the trade tables this was written from. */
export const pages = {
  1: 'How much reed is needed (2010)',
  3: 'Basket weaving with reeds (1983)',
  9: 'Practical Basketry, chapter II',
  12: 'Slotted bases (2009)',
  16: 'a napkin basket, as patterned',
  17: 'Single-lashing tutorial',
  19: 'How to scarf rims',
  20: 'Using swing handles',
  21: 'a page on chair cane (2019)',
  22: 'Determining the right cane size',
  26: 'Binder cane',
} as const;

export const memory = 'from memory';
export const practice = 'common practice, no source';

export type SizeSource =
  | (typeof pages)[keyof typeof pages]
  | 'computed'
  | typeof memory
  | typeof practice;
