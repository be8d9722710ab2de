/** Figures of a basket as a person reads them, with their unit and, for a difference, their sign. */
import { unitWords } from '#words/units.ts';
import { capacityFigure, dryQuart, litre } from './capacity.ts';
import type { Unit } from './schema.ts';
import { formatLength, unitLength } from './units.ts';

/** What a figure measures: mm, mm of strand, mm of one stake gap, mm³, degrees, or a number. */
export type MeasureKind = 'length' | 'strand' | 'gap' | 'capacity' | 'angle' | 'count';

const foot = 12 * 25.4;

/** Too small for a tape, so it is written as a decimal. */
const gapPlaces: Readonly<Record<Unit, number>> = { in: 3, cm: 2, mm: 1 };

/** `30 1/4 in`, `41.2 ft`, `0.006 in`, `6.25 dry qt`, `12°`, `4`; a dash for no number. */
export function measureText(kind: MeasureKind, value: number, unit: Unit): string {
  return signedText(kind, value, unit, false);
}

/** A difference of one stake gap with its sign, without its unit: `+0.006`. */
export function gapDifference(value: number, unit: Unit): string {
  if (!Number.isFinite(value)) return '–';
  const text = gapFigure(Math.abs(value), unit);
  return withSign(text, value, true);
}

/** As `measureText`, with + or − before all that is not 0; of a capacity a decimal more. */
export function differenceText(kind: MeasureKind, value: number, unit: Unit): string {
  return signedText(kind, value, unit, true);
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

function signedText(kind: MeasureKind, value: number, unit: Unit, isDifference: boolean): string {
  if (!Number.isFinite(value)) return '–';
  return withSign(unsigned(kind, Math.abs(value), unit, isDifference), value, isDifference);
}

function withSign(text: string, value: number, isDifference: boolean): string {
  if (!/[1-9]/.test(text)) return text;
  if (value < 0) return `−${text}`;
  return isDifference ? `+${text}` : text;
}

function gapFigure(value: number, unit: Unit): string {
  return (value / unitLength[unit]).toFixed(gapPlaces[unit]);
}

function unsigned(kind: MeasureKind, value: number, unit: Unit, isDifference: boolean): string {
  const { name, size } = measureUnit(kind, unit);
  switch (kind) {
    case 'length':
      return formatLength(value, unit);
    case 'gap':
      return `${gapFigure(value, unit)} ${name}`;
    case 'capacity':
      return `${isDifference ? (value / size).toFixed(2) : capacityFigure(value / size)} ${name}`;
    case 'strand':
      return `${(value / size).toFixed(1)} ${name}`;
    case 'angle':
      return `${value.toFixed(1)}°`;
    case 'count':
      return `${Math.round(value)}`;
  }
}
