/** Plain sentences with lengths in them: `{mm:12.3}` stands for 12.3 mm until a unit is known. */
import type { Unit } from './schema.ts';
import { formatLength } from './units.ts';

const token = /\{mm:(-?\d+(?:\.\d+)?(?:e[+-]?\d+)?)\}/gi;

/** `text` with every `{mm:…}` written as a length in `unit`, its unit included. */
export function withLengths(text: string, unit: Unit): string {
  return text.replace(token, (_whole, millimetres: string) =>
    formatLength(Number(millimetres), unit),
  );
}
