/** Two baskets compared in a few figures: the second less the first. */
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

type Figure = readonly [name: string, kind: MeasureKind, value: number];

function figures(basket: Basket): readonly Figure[] {
  const { summary, rows } = basket;
  const { belly, rim } = summary;
  const needs = quantities(basket);
  return [
    ['Height', 'length', summary.height],
    ['Belly, tape girth', 'length', belly.tapeGirth],
    ['Belly, at row', 'count', belly.row],
    ['Rim, tape girth', 'length', rim.tapeGirth],
    ['Rim, length', 'length', rim.length],
    ['Rim, width', 'length', rim.width],
    ['Lean at the rim', 'angle', rows.at(-1)?.lean ?? Number.NaN],
    ['Feet', 'count', summary.feet],
    ['Height of the feet', 'length', summary.footHeight],
    ['Clear under the middle', 'length', summary.centreClearance],
    ['Capacity', 'capacity', summary.capacity],
    ['Ends', 'count', summary.ends],
    ['Rows', 'count', summary.rows],
    ['Stakes, longest to cut', 'length', Math.max(0, ...needs.stakes.map(({ length }) => length))],
    ['Stakes, all', 'strand', together(needs.stakes)],
    ['Weavers, all', 'strand', needs.weavers.reduce((sum, { length }) => sum + length, 0)],
    ['Rim strands, all', 'strand', together(needs.rim)],
    ['Handle strands, all', 'strand', together(needs.handle)],
  ];
}

function together(parts: readonly Part[]): number {
  return parts.reduce((sum, { count, length }) => sum + count * length, 0);
}
