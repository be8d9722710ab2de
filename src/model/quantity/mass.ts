import { sectionArea } from '../strand/section.ts';
import type { Stock } from './part.ts';

/** Grams in a cubic millimetre of dry reed: 0.52 g/cm³, from the trade's footage per pound. */
const reedDensity = 0.52e-3;

/** Weight of `length` mm of a strand, g. Cane is taken as flat. */
export function strandGrams(stock: Stock, length: number): number {
  const { width, thickness, section } = stock;
  const area = sectionArea({ section: section === 'cane' ? 'flat' : section, width, thickness });
  return reedDensity * area * length;
}
