/** Two baskets compared in a few figures: the second less the first. */
import { comparingWords } from '#words/comparing.ts';
import type { MeasureKind } from '../../plan/measureText.ts';
import type { Basket } from '../basket.ts';
import type { Part } from '../quantity/part.ts';
import { quantities } from '../quantity/quantities.ts';

export interface Measure {
  readonly name: string;
  readonly kind: MeasureKind;
  readonly a: number;
  readonly b: number;
  readonly difference: number;
}

/** Height, belly, rim, feet, capacity, lean at the rim, and what strand each takes. */
export function measures(a: Basket, b: Basket): readonly Measure[] {
  const [one, other] = [figures(a), figures(b)];
  return one.map(([name, kind, value], index) => {
    const there = other[index]?.[2] ?? Number.NaN;
    return { name, kind, a: value, b: there, difference: there - value };
  });
}

const says = comparingWords;

type Figure = readonly [name: string, kind: MeasureKind, value: number];

function figures(basket: Basket): readonly Figure[] {
  const { summary, rows } = basket;
  const { belly, rim } = summary;
  const needs = quantities(basket);
  return [
    [says.height, 'length', summary.height],
    [says.heightWithRim, 'length', summary.heightWithRim],
    [says.bellyGirth, 'length', belly.tapeGirth],
    [says.bellyRow, 'count', belly.row],
    [says.rimGirth, 'length', rim.tapeGirth],
    [says.rimLength, 'length', rim.length],
    [says.rimWidth, 'length', rim.width],
    [says.rimLean, 'angle', rows.at(-1)?.lean ?? Number.NaN],
    [says.feet, 'count', summary.feet],
    [says.footHeight, 'length', summary.footHeight],
    [says.clearance, 'length', summary.centreClearance],
    [says.capacity, 'capacity', summary.capacity],
    [says.ends, 'count', summary.ends],
    [says.rows, 'count', summary.rows],
    [says.longestStake, 'length', Math.max(0, ...needs.stakes.map(({ length }) => length))],
    [says.stakes, 'strand', together(needs.stakes)],
    [says.weavers, 'strand', needs.weavers.reduce((sum, { length }) => sum + length, 0)],
    [says.rim, 'strand', together(needs.rim)],
    [says.handle, 'strand', together(needs.handle)],
  ];
}

function together(parts: readonly Part[]): number {
  return parts.reduce((sum, { count, length }) => sum + count * length, 0);
}
