/**
 * The settled basket as a plain record for `shape.json`: lengths mm, angles degrees, capacity mm³, area mm², weight g
 * (docs/design-file.md). Numbers are written to four decimals.
 */
import type { Basket, Finding, StakeReading } from '../model/basket.ts';
import type { Part } from '../model/quantity/part.ts';
import type { Material, Quantities } from '../model/quantity/quantities.ts';
import { quantities } from '../model/quantity/quantities.ts';
import type { ShoppingLine } from '../model/quantity/shopping.ts';
import { shoppingList } from '../model/quantity/shopping.ts';
import type { WeaverNeed } from '../model/quantity/weavers.ts';
import { withLengths } from '../plan/lengthText.ts';
import type { Unit } from '../plan/schema.ts';
import { rounded } from './rounded.ts';

const places = 4;

/** What `shape.json` holds. */
export interface Shape {
  readonly summary: Basket['summary'];
  readonly rows: Basket['rows'];
  readonly stakes: Basket['stakes'];
  /** Stakes, then what the rim and the handle take; `length` is what to cut. */
  readonly cutList: readonly CutLine[];
  readonly weavers: readonly WeaverNeed[];
  /** Strand by size for one basket, without waste; lengths mm, weights g. */
  readonly materials: readonly Material[];
  /** What to buy for one basket. */
  readonly shopping: readonly ShoppingLine[];
  /** As in the basket, the lengths in the texts written in the plan's unit. */
  readonly findings: readonly Finding[];
}

/** A line of the cut list: `needed` is what the shape takes, `length` that rounded up. */
export interface CutLine {
  readonly part: string;
  readonly count: number;
  readonly length: number;
  readonly needed: number;
  readonly section: string;
  readonly width: number;
  readonly thickness: number;
}

/** The basket as plain data. */
export function shapeJson(basket: Basket): Shape {
  const { plan, summary, rows, stakes, findings } = basket;
  const { unit } = plan.display;
  const needs = quantities(basket);
  return {
    summary: {
      ...numbersRounded(summary),
      belly: numbersRounded(summary.belly),
      rim: numbersRounded(summary.rim),
      worstGirthError: rounded(summary.worstGirthError, 8),
      worstStakeStretch: rounded(summary.worstStakeStretch, 8),
    },
    rows: rows.map((row) => ({
      ...numbersRounded(row),
      edgeStrain: rounded(row.edgeStrain, 8),
    })),
    stakes: stakes.map(stake),
    ...quantitiesOf(needs),
    shopping: shoppingList(needs, 1, plan.allowances.waste, unit).map((line) => ({
      ...numbersRounded(line),
      material: numbersRounded(line.material),
    })),
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

function quantitiesOf(needs: Quantities) {
  const parts: readonly Part[] = [...needs.stakes, ...needs.rim, ...needs.handle];
  return {
    cutList: parts.map(({ part, count, length, needed, stock: { section, width, thickness } }) =>
      numbersRounded({ part, count, length, needed, section, width, thickness }),
    ),
    weavers: needs.weavers.map(numbersRounded),
    materials: needs.materials.map(numbersRounded),
  };
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
