import type { Unit } from '../plan/schema.ts';
import type { Control } from './control.ts';

/** Range of a length, mm. */
export interface LengthRange {
  readonly least: number;
  readonly most: number;
}

/** A length of `mm` that is kept between `least` and `most` and committed through `onCommit`. */
export function lengthControl(
  label: string,
  mm: number,
  unit: Unit,
  { least, most }: LengthRange,
  onCommit: (mm: number, stepped: boolean) => string | null,
): Control {
  return { kind: 'length', label, mm, unit, least, most, onCommit };
}
