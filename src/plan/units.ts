/**
 * Lengths as a person types and reads them. Inside, every length is in millimetres; inches are
 * shown to the sixteenth, centimetres and millimetres to one decimal.
 */
import { unitWords } from '#words/units.ts';
import { fractionValue, mixedFraction, withPlainFractions } from './fraction.ts';
import { withPlainFigures } from './plainFigures.ts';
import type { Unit } from './schema.ts';

/** Millimetres in one of each unit. The inch is 25.4 mm exactly. */
export const unitLength: Readonly<Record<Unit, number>> = { in: 25.4, cm: 10, mm: 1 };

/** A typed length in millimetres, or what is wrong with it, as a sentence. */
export type ParsedLength =
  | { readonly ok: true; readonly mm: number }
  | { readonly ok: false; readonly problem: string };

export interface LengthInput {
  /** A minus sign is allowed. Default: no. */
  readonly signed?: boolean;
}

export interface LengthOutput {
  /** Write the unit behind the number. Default: yes. */
  readonly withUnit?: boolean;
}

const signs = { in: ['"', '″', '”', "''"], cm: [], mm: [] } as const;

/** Units by all that is understood for them, in lower case. */
const unitNames: ReadonlyMap<string, Unit> = new Map(
  (['in', 'cm', 'mm'] as const).flatMap((unit) =>
    [unit, ...signs[unit], unitWords.length[unit].toLowerCase(), ...unitWords.spellings[unit]].map(
      (name) => [name, unit] as const,
    ),
  ),
);

const says = unitWords.typed;

const minus = '−';

/** Steps that one of each unit is shown in. */
const stepsOfUnit: Readonly<Record<Unit, number>> = { in: 16, cm: 10, mm: 10 };

/** No length here is longer than this: 100 m. */
const longest = 100_000;

/**
 * Reads `3 1/2`, `3.5in`, `3 1/2"`, `3½`, `89 mm`, `8,9 cm`, `８．９ｃｍ`. A bare number is in `unit`.
 */
export function parseLength(text: string, unit: Unit, options: LengthInput = {}): ParsedLength {
  const typed = withPlainFractions(withPlainFigures(text)).trim();
  if (typed === '') return problem(says.nothing);
  const isNegative = /^[-−–]/.test(typed);
  if (isNegative && !options.signed) return problem(says.negative(shortened(text)));
  const unsigned = typed.replace(options.signed ? /^[-−–+]\s*/ : /^\+\s*/, '');

  const suffix = /[^\d.,/\s-].*$/.exec(unsigned);
  const named = (suffix?.[0] ?? unit).toLowerCase().trim();
  const given = unitNames.get(named);
  if (!given) return problem(says.otherUnit(shortened(text)));

  const body = unsigned.slice(0, suffix?.index).trim();
  if (/^[1-9]\d{0,2},\d{3}$/.test(body)) {
    return problem(says.comma(shortened(text)));
  }
  const value = fractionValue(body) ?? decimalValue(body);
  if (value === undefined) return problem(says.noNumber(shortened(text)));
  const mm = value * unitLength[given];
  if (!(mm <= longest)) return problem(says.tooLong(shortened(text), `${longest / 1000}`));
  return { ok: true, mm: isNegative && mm > 0 ? -mm : mm };
}

/** `3 1/2 in`, `8.9 cm`, `89 mm`. A value that is not finite is shown as a dash. */
export function formatLength(
  mm: number,
  unit: Unit,
  { withUnit = true }: LengthOutput = {},
): string {
  if (!Number.isFinite(mm)) return '–';
  const number = unsignedText(Math.abs(mm), unit);
  const sign = mm < 0 && number !== '0' ? minus : '';
  return withUnit ? `${sign}${number} ${unitWords.length[unit]}` : `${sign}${number}`;
}

/** A change of length with its sign: `+3/16 in`, `−5 mm`, `0 cm`. */
export function formatChange(mm: number, unit: Unit, output: LengthOutput = {}): string {
  const text = formatLength(mm, unit, output);
  return mm > 0 && Number.isFinite(mm) && unsignedText(mm, unit) !== '0' ? `+${text}` : text;
}

/** A length as it is shown, in mm: to the sixteenth of an inch, or to one decimal of cm or mm. */
export function shownLength(mm: number, unit: Unit): number {
  const step = leastShown(unit);
  const steps = Math.round((Math.abs(mm) / unitLength[unit]) * stepsOfUnit[unit]);
  return Math.sign(mm) * steps * step;
}

/** The shortest length that is shown as more than 0, mm. */
export function leastShown(unit: Unit): number {
  return unitLength[unit] / stepsOfUnit[unit];
}

/** From one length to another as both are shown, mm: what a maker gets who subtracts on paper. */
export function shownChange(from: number, to: number, unit: Unit): number {
  return shownLength(to, unit) - shownLength(from, unit);
}

function unsignedText(mm: number, unit: Unit): string {
  const value = mm / unitLength[unit];
  return unit === 'in'
    ? mixedFraction(value)
    : `${Math.round(value * stepsOfUnit[unit]) / stepsOfUnit[unit]}`;
}

function decimalValue(body: string): number | undefined {
  return /^(?:\d{1,9}(?:[.,]\d{0,12})?|[.,]\d{1,12})$/.test(body)
    ? Number(body.replace(',', '.'))
    : undefined;
}

function problem(sentence: string): ParsedLength {
  return { ok: false, problem: sentence };
}

function shortened(text: string): string {
  const short = text.trim();
  return short.length > 30 ? `${short.slice(0, 29)}…` : short;
}
