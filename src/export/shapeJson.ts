/**
 * The settled basket as a plain record for `shape.json`: lengths mm, angles degrees, capacity mm³
 * (docs/design-file.md). Numbers are written to four decimals.
 */
import type { Basket, Finding, StakeReading } from '../model/basket.ts';
import { withLengths } from '../plan/lengthText.ts';
import type { Unit } from '../plan/schema.ts';
import { rounded } from './rounded.ts';

const places = 4;

/** What `shape.json` holds. */
export interface Shape {
  readonly summary: Basket['summary'];
  readonly rows: Basket['rows'];
  readonly stakes: Basket['stakes'];
  readonly cutList: Basket['cutList'];
  /** As in the basket, the lengths in the texts written in the plan's unit. */
  readonly findings: readonly Finding[];
}

/** The basket as plain data. */
export function shapeJson({ plan, summary, rows, stakes, cutList, findings }: Basket): Shape {
  const { unit } = plan.display;
  return {
    summary: {
      ...numbersRounded(summary),
      belly: numbersRounded(summary.belly),
      rim: numbersRounded(summary.rim),
      worstGirthError: rounded(summary.worstGirthError, 8),
      worstStakeStretch: rounded(summary.worstStakeStretch, 8),
    },
    rows: rows.map(numbersRounded),
    stakes: stakes.map(stake),
    cutList: cutList.map(numbersRounded),
    findings: findings.map((one) => finding(one, unit)),
  };
}

/** The text of `shape.json`: one row, stake, part or finding a line. */
export function shapeJsonText(basket: Basket): string {
  const { summary, ...lists } = shapeJson(basket);
  const parts = Object.entries(lists).map(([name, list]) => `  "${name}": ${lines(list)}`);
  return `{\n  "summary": ${JSON.stringify(summary)},\n${parts.join(',\n')}\n}\n`;
}

function lines(list: readonly unknown[]): string {
  if (list.length === 0) return '[]';
  return `[\n${list.map((one) => `    ${JSON.stringify(one)}`).join(',\n')}\n  ]`;
}

function stake(reading: StakeReading): StakeReading {
  const path = reading.path.map(
    ([x, y, z]) => [rounded(x, places), rounded(y, places), rounded(z, places)] as const,
  );
  return { ...numbersRounded(reading), path };
}

function finding(one: Finding, unit: Unit): Finding {
  return { ...numbersRounded(one), text: withLengths(one.text, unit) };
}

/** The record with its own numbers rounded; what is inside its lists and records is left alone. */
function numbersRounded<T extends object>(record: T): T {
  const entries = Object.entries(record).map(([key, value]) => [
    key,
    typeof value === 'number' ? rounded(value, places) : value,
  ]);
  return Object.fromEntries(entries);
}
