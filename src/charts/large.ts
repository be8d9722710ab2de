/** What is too large or too rough for a tape: areas, whole strands and weights. */
import type { Unit } from '../plan/schema.ts';

const inch = 25.4;
const foot = 12 * inch;
const ounce = 28.349523125;

/** An area in mm² as square inches, or square centimetres. */
export function areaText(area: number, unit: Unit): string {
  return unit === 'in' ? `${Math.round(area / inch ** 2)} in²` : `${Math.round(area / 100)} cm²`;
}

/** A length of strand in mm as feet, or metres. */
export function strandText(length: number, unit: Unit): string {
  return unit === 'in' ? `${Math.round(length / foot)} ft` : `${(length / 1000).toFixed(1)} m`;
}

/** A weight in g as ounces, or grams. */
export function weightText(grams: number, unit: Unit): string {
  return unit === 'in' ? `${Math.round(grams / ounce)} oz` : `${Math.round(grams)} g`;
}
