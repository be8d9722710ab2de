/** How far one press of a key moves a length, and where a dragged length comes to rest. */
import type { Unit } from './schema.ts';

/** A sixteenth of an inch, or a millimetre; `large` takes half an inch or ten millimetres. Result in mm. */
export function lengthStep(unit: Unit, large = false): number {
  if (unit === 'in') return (25.4 / 16) * (large ? 8 : 1);
  return large ? 10 : 1;
}

/** The nearest length that a tape in `unit` can show, mm. */
export function restingLength(length: number, unit: Unit): number {
  const step = lengthStep(unit);
  return tidyLength(Math.round(length / step) * step);
}

/** `length` moved by `steps` steps in `unit`, onto the tape's marks, mm. */
export function steppedLength(length: number, unit: Unit, steps: number, large: boolean): number {
  return restingLength(length + steps * lengthStep(unit, large), unit);
}

/** Lengths are kept to a ten-thousandth of a millimetre: 1/16 in is exactly 1.5875 mm. */
export function tidyLength(length: number): number {
  return Math.round(length * 1e4) / 1e4;
}
