import type { Unit } from '../../../plan/schema.ts';
import { formatLength } from '../../../plan/units.ts';

/** A length that is a matter of feel: to the half inch or the centimetre. */
export function aboutLength(mm: number, unit: Unit): string {
  const step = unit === 'in' ? 12.7 : 10;
  return formatLength(Math.max(step, Math.round(mm / step) * step), unit);
}
