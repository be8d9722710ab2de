/** What is typed on the measuring pad, and what is to be said of it. */

import { acrossDoubt } from '../../model/replan/acrossDoubt.ts';
import type { Doubt } from '../../model/replan/doubt.ts';
import { girthDoubt, heightDoubt } from '../../model/replan/doubt.ts';
import { topOfRow } from '../../model/replan/height.ts';
import { fractionValue, mixedFraction, withPlainFractions } from '../../plan/fraction.ts';
import { withPlainFigures } from '../../plan/plainFigures.ts';
import type { Unit } from '../../plan/schema.ts';
import { parseLength, unitLength } from '../../plan/units.ts';
import type { BenchWork } from './benchWork.ts';
import { replannedTape, targetTape } from './benchWork.ts';

export const measures = ['girth', 'length', 'width', 'height'] as const;
export type Measure = (typeof measures)[number];

/** Eighths of an inch as keys. */
export const eighths = ['1/8', '1/4', '3/8', '1/2', '5/8', '3/4', '7/8'] as const;

/** The key that adds a sixteenth to what is typed. */
export const sixteenth = '+1/16';

/** The text after a key: a digit or a point goes behind, a fraction takes the place of the last one. */
export function typed(text: string, key: string): string {
  const plain = withPlainFractions(withPlainFigures(text)).trim();
  if (key === sixteenth) return withSixteenth(plain);
  if (!key.includes('/')) return /\/\d+$/.test(plain) ? plain : `${plain}${key}`.slice(0, 12);
  const whole = plain.replace(/\s*\d+\/\d*$/, '').replace(/[.,].*$/, '');
  return whole === '' ? key : `${whole} ${key}`;
}

/** A sixteenth more; a text that is no whole number of sixteenths stays as it is. */
function withSixteenth(text: string): string {
  const value = fractionValue(text) ?? (/^\d*$/.test(text) ? Number(text) : Number.NaN);
  const sixteenths = 16 * value + 1;
  return Number.isInteger(sixteenths) ? mixedFraction(sixteenths / 16) : text;
}

/** What can be read of the text: a length with what is doubtful about it, or why it is none. */
export type Entry =
  | { readonly mm: number; readonly doubt: Doubt | null }
  | { readonly mm: null; readonly doubt: Doubt };

/** What the measure of row `row` should come to, mm. */
export function expectedOf(work: BenchWork, what: Measure, row: number): number {
  const { planBasket, table, course } = work;
  if (what === 'height') return topOfRow(planBasket, row);
  if (what === 'girth') {
    return row <= course.replan.from ? replannedTape(work, row) : targetTape(work, row);
  }
  return (table ?? planBasket).rows[row - 1]?.[what] ?? Number.NaN;
}

/** Reads `text` as a measure of row `row`. */
export function measureEntry(work: BenchWork, what: Measure, row: number, text: string): Entry {
  const parsed = parseLength(text, work.plan.display.unit);
  if (!parsed.ok) return { mm: null, doubt: { isImpossible: true, text: parsed.problem } };
  const { mm } = parsed;
  const { planBasket, record } = work;
  const expected = expectedOf(work, what, row);
  if (what === 'height') return { mm, doubt: heightDoubt(mm, row, expected) };
  if (what !== 'girth') {
    const other = record.across[row]?.[what === 'length' ? 'width' : 'length'];
    const girth = record.girths[row] ?? expectedOf(work, 'girth', row);
    return { mm, doubt: acrossDoubt(mm, { row, which: what, expected, girth, other }) };
  }
  const wall = planBasket.rows[row - 1]?.wall ?? planBasket.rows.at(-1)?.wall ?? 0;
  const least = planBasket.summary.baseGirth - 2 * Math.PI * wall;
  return { mm, doubt: girthDoubt(mm, row, measuredBefore(work, row) ?? expected, least) };
}

/** Whether as many figures are typed as the length should have: from then on a doubt is said at once. */
export function isWhole(text: string, expected: number, unit: Unit): boolean {
  const figures = /^\d*/.exec(text.trim())?.[0].length ?? 0;
  return figures >= `${Math.floor(expected / unitLength[unit])}`.length;
}

/** A row measured before is expected where it was planned, not where it was mistyped. */
function measuredBefore(work: BenchWork, row: number): number | undefined {
  return work.record.girths[row] === undefined ? undefined : targetTape(work, row);
}
