/** How much a basket holds, in the measures of the trade. */
import { summaryWords } from '#words/summary.ts';
import type { Unit } from './schema.ts';

/** A US dry quart is 67.200625 cubic inches (NIST Handbook 44, Appendix C); in mm³. */
export const dryQuart = 67.200625 * 25.4 ** 3;

const { bushels, pecks, dryQuarts } = summaryWords.capacity;

/**
 * US dry measures: the quart, a peck of 537.605 cubic inches and a bushel of 2150.42 (NIST Handbook 44,
 * Appendix C); in mm³, the largest first.
 */
const dryMeasures = [
  { text: bushels, volume: 2150.42 * 25.4 ** 3 },
  { text: pecks, volume: 537.605 * 25.4 ** 3 },
  { text: dryQuarts, volume: dryQuart },
] as const;

const litre = 1e6;

/** Capacity in mm³ as it is told everywhere: in US dry measures for a plan in inches, else in litres. */
export function capacityText(capacity: number, unit: Unit): string {
  return unit === 'in' ? usDryMeasure(capacity) : summaryWords.capacity.litres(litres(capacity));
}

/** Capacity in mm³ in the largest US dry measure that it fills: quarts, pecks or bushels. */
export function usDryMeasure(capacity: number): string {
  // A hair short of a measure is that measure.
  const measure = dryMeasures.find(({ volume }) => capacity >= 0.995 * volume) ?? dryMeasures[2];
  const count = capacity / measure.volume;
  return Number.isFinite(count) ? measure.text(inQuarters(count)) : '–';
}

/** Capacity in mm³ as litres, to one decimal above 2 and to two below. */
export function litres(capacity: number): string {
  const volume = capacity / litre;
  if (!Number.isFinite(volume)) return '–';
  return volume.toFixed(volume < 2 ? 2 : 1);
}

/** A count of dry measures, to a quarter from 2 on, and to two decimals below. */
export function inQuarters(count: number): string {
  return count < 2 ? `${Number(count.toFixed(2))}` : `${Math.round(count * 4) / 4}`;
}
