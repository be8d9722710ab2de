/** How much a basket holds, in the measures of the trade: rounded alike wherever it is told. */
import { summaryWords } from '#words/summary.ts';
import type { Unit } from './schema.ts';

const words = summaryWords.capacity;

/** A US dry quart is 67.200625 cubic inches (NIST Handbook 44, Appendix C); in mm³. */
export const dryQuart = 67.200625 * 25.4 ** 3;

/**
 * US dry measures: the quart, a peck of 537.605 cubic inches and a bushel of 2150.42 (the same source);
 * in mm³, the largest first.
 */
const dryMeasures = [
  { text: words.bushels, volume: 2150.42 * 25.4 ** 3 },
  { text: words.pecks, volume: 537.605 * 25.4 ** 3 },
  { text: words.dryQuarts, volume: dryQuart },
] as const;

export const litre = 1e6;

/** A count of quarts, litres or the like: to one decimal from 2 on, and to two below. */
export function capacityFigure(count: number): string {
  return count.toFixed(count < 2 ? 2 : 1);
}

/** Capacity in mm³ in the measures of `unit`: US dry ones for inches, else litres. */
export function capacityText(capacity: number, unit: Unit): string {
  return unit === 'in' ? usDryMeasure(capacity) : litres(capacity);
}

/** Capacity in mm³ in the largest US dry measure that it fills: quarts, pecks or bushels. */
export function usDryMeasure(capacity: number): string {
  if (!Number.isFinite(capacity)) return '–';
  // A hair short of a measure is that measure.
  const measure = dryMeasures.find(({ volume }) => capacity >= 0.995 * volume) ?? dryMeasures[2];
  return measure.text(capacityFigure(capacity / measure.volume));
}

/** Capacity in mm³ as litres. */
export function litres(capacity: number): string {
  return Number.isFinite(capacity) ? words.litres(capacityFigure(capacity / litre)) : '–';
}
