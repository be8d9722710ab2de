/** What is too large or too rough for a tape: areas, whole strands and weights. */
import { summaryWords } from '#words/summary.ts';
import type { Unit } from '../plan/schema.ts';

const { units } = summaryWords;

const inch = 25.4;
const foot = 12 * inch;
const ounce = 28.349523125;

/** An area in mm² as square inches, or square centimetres. */
export function areaText(area: number, unit: Unit): string {
  return unit === 'in'
    ? units.squareInches(`${Math.round(area / inch ** 2)}`)
    : units.squareCentimetres(`${Math.round(area / 100)}`);
}

/** A length of strand in mm as feet, or metres. */
export function strandText(length: number, unit: Unit): string {
  return unit === 'in'
    ? units.feet(`${Math.round(length / foot)}`)
    : units.metres((length / 1000).toFixed(1));
}

/** A weight in g as ounces, or grams. */
export function weightText(grams: number, unit: Unit): string {
  return unit === 'in'
    ? units.ounces(`${Math.round(grams / ounce)}`)
    : units.grams(`${Math.round(grams)}`);
}
