/** A strip to cut out and wrap round: a mark at every row's girth. */
import { gaugeWords } from '#words/gauges.ts';
import { listWords } from '#words/lists.ts';
import type { Basket } from '../../../model/basket.ts';
import type { Unit } from '../../../plan/schema.ts';
import { unitLength } from '../../../plan/units.ts';
import type { Mark } from '../page/mark.ts';
import { box, inks, line } from '../page/mark.ts';
import type { Ruler } from '../page/ruler.ts';
import { words } from '../page/words.ts';

/** Of the zero line and of the mark at a row's girth; nothing else is drawn so. */
const zeroLine = { stroke: '#000000', width: 0.4 } as const;
const girthLine = { stroke: '#1f4e5f', width: 0.15 } as const;

/** Height of the strip and of a lane for row numbers, mm. */
export const stripHeight = 30;
const lanes = 5;
const lanesTop = 3;
const lane = 4.4;
/** Strip beyond the largest girth, mm. */
const spare = 15;
/** What one piece laps over the next, to glue, mm. */
export const glue = 10;

/** A piece of the strip: from where along it, and what is drawn, x from the piece's left edge. */
export interface StripPiece {
  readonly from: number;
  readonly length: number;
  readonly marks: readonly Mark[];
}

/** The strip in pieces of at most `width` mm, each with a tab of `glue` mm under the next. */
export function tapeStrip({ plan, rows }: Basket, ruler: Ruler, width: number): StripPiece[] {
  const whole = Math.max(...rows.map(({ tapeGirth }) => tapeGirth)) + spare;
  const step = width - glue;
  const count = Math.ceil(whole / step);
  const labels = labelled(rows, ruler, (girth) =>
    Math.min(whole, step * (Math.floor(girth / step) + 1)),
  );
  const { unit } = plan.display;
  return Array.from({ length: count }, (_, at): StripPiece => {
    const from = at * step;
    const length = Math.min(step, whole - from);
    const isLast = at === count - 1;
    const marks: Mark[] = [
      box([0, 0, length, stripHeight], { stroke: inks.soft, width: 0.2, dash: [2, 1.5] }),
      words(ruler, `${at + 1}`, 1.2, stripHeight - 1.4, { size: 7, ink: inks.soft }),
    ];
    if (at === 0) {
      marks.push(
        line([0, 0, 0, stripHeight], zeroLine),
        words(ruler, gaugeWords.strip.zero, 2, 8, { size: 7 }),
      );
    }
    if (!isLast) {
      marks.push(
        box([length, 0, glue, stripHeight], { stroke: inks.line, fill: inks.band }),
        words(ruler, gaugeWords.strip.glueHere(at + 2), length + glue / 2 + 1, stripHeight / 2, {
          size: 7,
          ink: inks.soft,
          turn: 90,
          align: 'middle',
        }),
      );
    }
    marks.push(...scale(ruler, unit, from, length));
    const numbers: Mark[] = [];
    const isHere = (girth: number) => girth >= from && girth < from + length;
    for (const { tapeGirth } of rows) {
      const x = tapeGirth - from;
      if (isHere(tapeGirth)) marks.push(line([x, lanesTop, x, stripHeight], girthLine));
    }
    for (const { girth, text, level, wide, isLeft } of labels) {
      if (!isHere(girth)) continue;
      const x = girth - from + (isLeft ? -wide - 1 : 0);
      const top = lanesTop + level * lane;
      numbers.push(
        box([x + 0.2, top, wide + 0.6, 2.6], { stroke: null, fill: inks.white }),
        words(ruler, text, x + 0.5, top + 2.4, { size: 6.5, bold: true }),
      );
    }
    return { from, length, marks: [...marks, ...numbers] };
  });
}

/** Whole inches or centimetres along the upper edge, as on a tape. */
function scale(ruler: Ruler, unit: Unit, from: number, length: number): Mark[] {
  const step = unit === 'in' ? unitLength.in : unitLength.cm;
  const every = unit === 'in' ? 1 : 5;
  const marks: Mark[] = [];
  for (let at = Math.max(1, Math.ceil(from / step)); at * step < from + length; at += 1) {
    const x = at * step - from;
    const isTold = at % every === 0;
    marks.push(line([x, 0, x, isTold ? 2.4 : 1.4], { stroke: inks.soft, width: 0.15 }));
    if (!isTold) continue;
    const text = `${at}`;
    const look = { size: 5.5, ink: inks.soft } as const;
    const fits = x + 0.4 + ruler.width(text, look.size, false) <= length;
    marks.push(
      fits
        ? words(ruler, text, x + 0.4, 2.3, look)
        : words(ruler, text, x - 0.4, 2.3, { ...look, align: 'right' }),
    );
  }
  return marks;
}

interface Label {
  readonly girth: number;
  readonly text: string;
  readonly level: number;
  /** Width of the text, mm. */
  readonly wide: number;
  /** To the left of its mark, where there is no room before the piece's end. */
  readonly isLeft: boolean;
}

/** Marks nearer to one another than this share a label, mm. */
const together = 0.4;

/** Labels in the order of girths, each in a lane where it has room; `endOf` tells where a girth's piece ends. */
function labelled(rows: Basket['rows'], ruler: Ruler, endOf: (girth: number) => number): Label[] {
  const free = Array<number>(lanes).fill(Number.NEGATIVE_INFINITY);
  const groups: { girth: number; rows: number[] }[] = [];
  for (const { row, tapeGirth } of rows.toSorted((one, two) => one.tapeGirth - two.tapeGirth)) {
    const last = groups.at(-1);
    if (last && tapeGirth - last.girth <= together) last.rows.push(row);
    else groups.push({ girth: tapeGirth, rows: [row] });
  }
  return groups.map(({ girth, rows: numbers }): Label => {
    const rowNumbers = runs(numbers);
    const isLeft = girth + ruler.width(rowNumbers, 6.5, true) + 1 > endOf(girth);
    const text = isLeft ? gaugeWords.strip.leftOfMark(rowNumbers) : rowNumbers;
    const wide = ruler.width(text, 6.5, true);
    const from = isLeft ? girth - wide - 1 : girth;
    const open = free.findIndex((until) => until <= from);
    const level = open >= 0 ? open : free.indexOf(Math.min(...free));
    free[level] = from + wide + 1;
    return { girth, text, level, wide, isLeft };
  });
}

/** `1–4, 7`: row numbers, those that follow one another taken together. */
function runs(numbers: readonly number[]): string {
  const found: [number, number][] = [];
  for (const number of numbers.toSorted((one, other) => one - other)) {
    const last = found.at(-1);
    if (last && last[1] === number - 1) last[1] = number;
    else found.push([number, number]);
  }
  return listWords.things(found.map(([from, to]) => (from === to ? `${from}` : `${from}–${to}`)));
}
