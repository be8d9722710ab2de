/**
 * What a coil holds. Feet to a pound as makers know them: most figures are from memory (15–20 % off
 * is usual, and coils differ), one is published; a size that is not listed is computed from its
 * section at 0.52 g/cm³.
 */
import { strandGrams } from './mass.ts';
import type { Section, Stock } from './part.ts';

/** Where a figure comes from. */
export type YieldSource = 'published' | 'memory' | 'computed';

export interface Yield {
  /** Millimetres of strand to a gram. */
  readonly lengthPerGram: number;
  readonly source: YieldSource;
}

const foot = 304.8;
const pound = 453.59237;

/** Width in mm and feet to a pound. */
type Line = readonly [width: number, feet: number, source?: YieldSource];

const listed: Readonly<Partial<Record<Section, readonly Line[]>>> = {
  flat: [
    [4.8, 400],
    [6.35, 370],
    [9.5, 265],
    [12.7, 185, 'published'], // trade tables, source 1
    [15.9, 140],
    [19.1, 120],
    [22.2, 100],
    [25.4, 75],
  ],
  'flat-oval': [
    [4.4, 400],
    [4.8, 350],
    [6.35, 275],
    [9.5, 175],
    [12.7, 120],
    [15.9, 100],
    [19.1, 75],
  ],
  round: [
    [1.25, 2200],
    [1.5, 1600],
    [1.75, 1100],
    [2.25, 750],
    [2.75, 500],
    [3.25, 350],
    [4.25, 200],
    [4.75, 160],
    [5, 150],
  ],
};

/** A listed size is taken for one whose width is off by no more than this share. */
const near = 0.04;
/** A strand this many times as thick or thin as usual is not the one that is listed. */
const odd = 1.6;

/** How much strand a gram is. */
export function yieldOf(stock: Stock): Yield {
  const off = ([width]: Line) => Math.abs(width / stock.width - 1);
  const lines = listed[stock.section] ?? [];
  const best = lines.toSorted((one, other) => off(one) - off(other))[0];
  const computed = 1 / strandGrams(stock, 1);
  if (best && off(best) <= near) {
    const [, feet, source = 'memory'] = best;
    const lengthPerGram = (feet * foot) / pound;
    const share = lengthPerGram / computed;
    if (share > 1 / odd && share < odd) return { lengthPerGram, source };
  }
  return { lengthPerGram: computed, source: 'computed' };
}
