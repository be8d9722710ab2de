/** What the findings have in common: one function a file, a reading in, what it gives rise to out. */
import { findingWords } from '#words/findings.ts';
import type { Finding, Measured } from '../basket.ts';

export type Find = (reading: Measured) => readonly Finding[];

/** A row and how far something is off there. */
export interface RowValue {
  readonly row: number;
  readonly value: number;
}

/** Rows that follow one another without a break, and the one of them where it is worst. */
export interface Stretch {
  readonly rows: readonly number[];
  readonly worst: RowValue;
}

/** Gathers rows (in order from the base) into unbroken stretches; worst is the largest |value|. */
export function stretches(found: readonly RowValue[]): Stretch[] {
  const list: { rows: number[]; worst: RowValue }[] = [];
  for (const here of found) {
    const last = list.at(-1);
    if (last && last.rows.at(-1) === here.row - 1) {
      last.rows.push(here.row);
      if (Math.abs(here.value) > Math.abs(last.worst.value)) last.worst = here;
    } else {
      list.push({ rows: [here.row], worst: here });
    }
  }
  return list;
}

/** `Row 5`, or `Rows 5 to 9`. */
export function named(rows: readonly number[]): string {
  return findingWords.rows(rows[0], rows.at(-1));
}

/** A length of so many mm, for the view to write in the plan's unit. */
export function mm(length: number): string {
  // one that is nearly nothing is still not 0
  const digits = Math.abs(length) < 0.01 ? length.toPrecision(1) : length.toFixed(2);
  return `{mm:${Number(digits)}}`;
}

/** How far apart two lengths of so many mm are as the view shows them, which is what its charts say. */
export function mmBetween(one: number, other: number): string {
  return `{mm:${Number(one.toFixed(2))}-${Number(other.toFixed(2))}}`;
}

/** A share as a percentage with two digits that count: 0.00345 is `0.35 %`. */
export function percent(share: number): string {
  return `${Number((100 * share).toPrecision(2))} %`;
}
