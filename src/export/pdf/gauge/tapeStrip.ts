/** A strip to cut out and wrap round: a mark at every row's girth. */
import type { Basket } from '../../../model/basket.ts';
import type { Unit } from '../../../plan/schema.ts';
import { unitLength } from '../../../plan/units.ts';
import type { Mark } from '../page/mark.ts';
import { box, inks, line } from '../page/mark.ts';
import type { Ruler } from '../page/ruler.ts';
import { words } from '../page/words.ts';

/** Of the zero line and of the mark at a row's girth; nothing else is drawn so. */
export const zeroLine = { stroke: '#000000', width: 0.4 } as const;
export const girthLine = { stroke: '#1f4e5f', width: 0.15 } as const;

/** Height of the strip and of a lane for row numbers, mm. */
export const stripHeight = 30;
const lanes = 5;
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
  const labels = labelled(rows, ruler);
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
        words(ruler, '0: the row’s mark meets this end', 2, 8, { size: 7 }),
      );
    }
    if (!isLast) {
      marks.push(
        box([length, 0, glue, stripHeight], { stroke: inks.line, fill: inks.band }),
        words(ruler, `glue ${at + 2} here`, length + glue / 2 + 1, stripHeight / 2, {
          size: 7,
          ink: inks.soft,
          turn: 90,
          align: 'middle',
        }),
      );
    }
    marks.push(...scale(ruler, unit, from, length));
    const numbers: Mark[] = [];
    for (const { girth, text, level } of labels) {
      const x = girth - from;
      if (x < 0 || x >= length) continue;
      const top = 3 + level * lane;
      const wide = ruler.width(text, 6.5, true);
      marks.push(line([x, top, x, stripHeight], girthLine));
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
    if (isTold) marks.push(words(ruler, `${at}`, x + 0.4, 2.3, { size: 5.5, ink: inks.soft }));
  }
  return marks;
}

interface Label {
  readonly girth: number;
  readonly text: string;
  readonly level: number;
}

/** A mark a row, in the order of girths, each number in a lane where it has room. */
function labelled(rows: Basket['rows'], ruler: Ruler): Label[] {
  const free = Array<number>(lanes).fill(Number.NEGATIVE_INFINITY);
  return rows
    .toSorted((one, other) => one.tapeGirth - other.tapeGirth || one.row - other.row)
    .map(({ row, tapeGirth }): Label => {
      const open = free.findIndex((until) => until <= tapeGirth);
      const level = open >= 0 ? open : free.indexOf(Math.min(...free));
      const text = `${row}`;
      free[level] = tapeGirth + ruler.width(text, 6.5, true) + 1;
      return { girth: tapeGirth, text, level };
    });
}
