/** What a typed length becomes: millimetres inside the limits, or a sentence that says why not. */

import { fieldWords } from '#words/fields.ts';
import { lengthStep, tidyLength } from '../plan/lengthStep.ts';
import type { Unit } from '../plan/schema.ts';
import type { ParsedLength } from '../plan/units.ts';
import { formatLength, parseLength, shownLength } from '../plan/units.ts';

export interface LengthLimits {
  readonly label: string;
  readonly unit: Unit;
  /** Least and most, mm, both allowed. */
  readonly least: number;
  readonly most: number;
}

/**
 * Reads `typed`. The limits are shown rounded to the unit, so a length that rounds to one of them
 * is taken as that limit.
 */
export function lengthEntry(typed: string, limits: LengthLimits): ParsedLength {
  const parsed = parseLength(typed, limits.unit, { signed: true });
  if (!parsed.ok) return { ok: false, problem: fieldWords.unread(limits.label, parsed.problem) };
  const slack = lengthStep(limits.unit) / 2;
  const { least, most } = limits;
  if (!(parsed.mm >= least - slack && parsed.mm <= most + slack)) {
    const problem = fieldWords.refused(limits.label, rangeText(limits), typed.trim());
    return { ok: false, problem };
  }
  return { ok: true, mm: tidyLength(Math.min(most, Math.max(least, parsed.mm))) };
}

/**
 * Whether `typed` is the length that `mm` is shown as, however written. It then stands for `mm`
 * itself: a gap of 9.5 mm is shown as 3/8 in, and 3/8 typed back leaves it at 9.5 mm.
 */
export function isAsShown(typed: string, mm: number, unit: Unit): boolean {
  const parsed = parseLength(typed, unit, { signed: true });
  return parsed.ok && Math.abs(parsed.mm - shownLength(mm, unit)) < 1e-6;
}

/** `0 to 200 mm`. */
export function rangeText({ unit, least, most }: LengthLimits): string {
  return fieldWords.range(formatLength(least, unit, { withUnit: false }), formatLength(most, unit));
}

/** The length in mm, where a strand's fine size would be lost in the unit's rounding; else nothing. */
export function fineText(mm: number, unit: Unit): string {
  if (unit === 'mm') return '';
  const shown = parseLength(formatLength(mm, unit, { withUnit: false }), unit);
  const isExact = shown.ok && Math.abs(shown.mm - mm) < 0.06;
  return isExact ? '' : fieldWords.millimetres(`${Math.round(mm * 100) / 100}`);
}
