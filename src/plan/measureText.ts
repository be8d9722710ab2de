/** Figures of a basket as a person reads them, with their unit and, for a difference, their sign. */
import { unitWords } from '#words/units.ts';
import { capacityFigure, dryQuart, litre } from './capacity.ts';
import type { Unit } from './schema.ts';
import { formatChange, formatLength, shownChange, unitLength } from './units.ts';

/** What a figure measures: mm, mm of strand, mm of one stake gap, mm³, degrees, or a number. */
export type MeasureKind = 'length' | 'strand' | 'gap' | 'capacity' | 'angle' | 'count';

const foot = 12 * 25.4;

/** Too small for a tape, so it is written as a decimal. */
const gapPlaces: Readonly<Record<Unit, number>> = { in: 3, cm: 2, mm: 1 };

/** `30 1/4 in`, `41.2 ft`, `0.006 in`, `6.25 dry qt`, `12°`, `4`; a dash for no number. */
export function measureText(kind: MeasureKind, value: number, unit: Unit): string {
  if (!Number.isFinite(value)) return '–';
  if (kind === 'length') return formatLength(value, unit);
  const text = named(kind, figure(kind, Math.abs(value), unit), unit);
  return withSign(text, value, false);
}

/** `−16°`, as a lean is told; a dash for no number. */
export function wholeDegrees(angle: number): string {
  return Number.isFinite(angle) ? withSign(`${Math.abs(Math.round(angle))}°`, angle, false) : '–';
}

/** A difference of one stake gap with its sign, without its unit: `+0.006`. */
export function gapDifference(value: number, unit: Unit): string {
  if (!Number.isFinite(value)) return '–';
  return withSign(figure('gap', Math.abs(value), unit), value, true);
}

/**
 * What the second figure is more or less than the first, both as they are shown, with + or − before all that
 * is not 0: what one gets who takes the one from the other on paper.
 */
export function differenceText(kind: MeasureKind, from: number, to: number, unit: Unit): string {
  if (!Number.isFinite(to - from)) return '–';
  if (kind === 'length') return formatChange(shownChange(from, to, unit), unit);
  const [one, other] = [from, to].map((value) => figure(kind, Math.abs(value), unit));
  const signed = (text = '', value: number) => Math.sign(value) * Number(text);
  const change = signed(other, to) - signed(one, from);
  const decimals = Math.max(decimalsOf(one), decimalsOf(other));
  return withSign(named(kind, Math.abs(change).toFixed(decimals), unit), change, true);
}

/** The unit that figures of a kind are written in as decimals, and its size; for a spreadsheet. */
export function measureUnit(kind: MeasureKind, unit: Unit): { name: string; size: number } {
  const inInches = unit === 'in';
  switch (kind) {
    case 'capacity':
      return inInches
        ? { name: unitWords.dryQuarts, size: dryQuart }
        : { name: unitWords.litres, size: litre };
    case 'strand':
      return inInches
        ? { name: unitWords.feet, size: foot }
        : { name: unitWords.metres, size: 1000 };
    case 'angle':
      return { name: unitWords.degrees, size: 1 };
    case 'count':
      return { name: unitWords.number, size: 1 };
    default:
      return { name: unitWords.length[unit], size: unitLength[unit] };
  }
}

function withSign(text: string, value: number, isDifference: boolean): string {
  if (!/[1-9]/.test(text)) return text;
  if (value < 0) return `−${text}`;
  return isDifference ? `+${text}` : text;
}

/** A number of the unit that `measureUnit` tells, without it; `value` is not negative. */
function figure(kind: MeasureKind, value: number, unit: Unit): string {
  const count = value / measureUnit(kind, unit).size;
  switch (kind) {
    case 'gap':
      return count.toFixed(gapPlaces[unit]);
    case 'capacity':
      return capacityFigure(count);
    case 'count':
      return count.toFixed(0);
    default:
      return count.toFixed(1);
  }
}

function named(kind: MeasureKind, text: string, unit: Unit): string {
  if (kind === 'count') return text;
  return kind === 'angle' ? `${text}°` : `${text} ${measureUnit(kind, unit).name}`;
}

function decimalsOf(text = ''): number {
  return text.split('.')[1]?.length ?? 0;
}
