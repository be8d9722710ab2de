/** A table that fits its place: one line a row, a text too long for its column in smaller type. */
import type { Mark } from '../page/mark.ts';
import { box, inks, line } from '../page/mark.ts';
import type { Ruler } from '../page/ruler.ts';
import { words } from '../page/words.ts';

export interface GridColumn {
  readonly title: string;
  /** Share of the table's width. */
  readonly share: number;
  /** Default: right. */
  readonly align?: 'left' | 'right';
  readonly bold?: boolean;
}

export interface GridLook {
  readonly size: number;
  /** Height of a row, mm. */
  readonly step: number;
  /** Row with a ground of its own. */
  readonly picked?: number;
}

const pad = 1;

/** Draws `rows` under the columns' titles from `[left, top]` over `width` mm; gives the height used. */
export function smallTable(
  ruler: Ruler,
  [left, top, width]: readonly [number, number, number],
  columns: readonly GridColumn[],
  rows: readonly (readonly string[])[],
  { size, step, picked = -1 }: GridLook,
): { readonly marks: Mark[]; readonly height: number } {
  const whole = columns.reduce((sum, { share }) => sum + share, 0);
  const marks: Mark[] = [];
  const write = (texts: readonly string[], y: number, isHead: boolean) => {
    let x = left;
    columns.forEach((column, at) => {
      const own = (width * column.share) / whole;
      const bold = isHead || column.bold === true;
      const text = ruler.drawable(texts[at] ?? '');
      // nothing is cut: part of a number is another number
      const fit = Math.min(1, (own - pad) / Math.max(0.1, ruler.width(text, size, bold)));
      const { align = 'right' } = column;
      const anchor = align === 'left' ? x + pad / 2 : x + own - pad / 2;
      const ink = isHead ? inks.soft : inks.ink;
      marks.push(words(ruler, text, anchor, y, { size: fit * size, bold, align, ink }));
      x += own;
    });
  };
  write(
    columns.map(({ title }) => title),
    top + 0.72 * step,
    true,
  );
  marks.push(
    line([left, top + step, left + width, top + step], { stroke: inks.soft, width: 0.25 }),
  );
  rows.forEach((texts, row) => {
    const y = top + (row + 1) * step;
    if (row === picked) {
      marks.push(box([left, y, width, step], { stroke: null, fill: '#e9dcc0' }));
    }
    write(texts, y + 0.75 * step, false);
    marks.push(line([left, y + step, left + width, y + step], { stroke: inks.faint, width: 0.12 }));
  });
  return { marks, height: (rows.length + 1) * step };
}
