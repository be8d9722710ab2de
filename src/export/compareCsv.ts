/** A comparison of two baskets as one table for a spreadsheet: the summary, then place by place. */
import { compareCsvWords as w } from '#words/compareCsv.ts';
import type { Basket } from '../model/basket.ts';
import type { Differences, PlaceDifference } from '../model/compare/differences.ts';
import type { Measure } from '../model/compare/measures.ts';
import { measureUnit } from '../plan/measureText.ts';
import type { Unit } from '../plan/schema.ts';
import { csv } from './csv.ts';
import { rounded } from './rounded.ts';

/** Two settled baskets and what was read off them side by side. */
export interface ComparedBaskets {
  readonly a: Basket;
  readonly b: Basket;
  readonly differences: Differences;
  readonly measures: readonly Measure[];
}

const places = 4;

/**
 * One line of headings, then a line for each figure and each row or height from the base up. Numbers
 * are decimals in the unit beside them; a place that a basket does not have is left empty.
 */
export function compareCsv({ a, b, differences, measures }: ComparedBaskets): string {
  const { unit } = a.plan.display;
  return csv([
    [
      w.part,
      w.figure,
      w.unit,
      w.a(a.plan.name),
      w.b(b.plan.name),
      w.difference,
      w.differencePerGap,
    ],
    ...measures.map((measure) => measureLine(measure, unit)),
    ...differences.places.map((place) => placeLine(place, unit)),
    totalLine(differences, unit),
  ]);
}

function measureLine({ name, kind, a, b, difference }: Measure, unit: Unit) {
  const { name: unitName, size } = measureUnit(kind, unit);
  const numbers = [a, b, difference].map((value) => number(value / size));
  return [w.summary, name, unitName, ...numbers, ''];
}

function placeLine({ place, height, a, b, difference, perGap }: PlaceDifference, unit: Unit) {
  const { name, size } = measureUnit('length', unit);
  const isByHeight = Number.isFinite(height);
  const numbers = [a, b, difference, perGap].map((value) => number(value / size));
  const [part, figure] = isByHeight
    ? [w.girthAtHeight, number(height / size)]
    : [w.girthOfRow, place];
  return [part, figure, name, ...numbers];
}

function totalLine({ total }: Differences, unit: Unit) {
  const { name, size } = measureUnit('length', unit);
  const numbers = [total.a, total.b, total.difference].map((value) => number(value / size));
  return [w.girthsTogether, total.places, name, ...numbers, ''];
}

function number(value: number): number | string {
  return Number.isFinite(value) ? rounded(value, places) : '';
}
