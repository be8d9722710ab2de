/** Tables that go over pages: headings are repeated, and no row is cut. */
import type { Flow } from './flow.ts';
import type { Ink } from './mark.ts';
import { box, inks, line } from './mark.ts';
import type { Align } from './words.ts';
import { leading, stacked, wrapped } from './words.ts';

export interface Column {
  readonly title: string;
  /** Share of the table's width. */
  readonly share: number;
  readonly align?: Align;
  readonly bold?: boolean;
  /** A box: `tick` is an empty square, `write` a place to write in where nothing is written yet. */
  readonly blank?: 'tick' | 'write';
}

export interface TableLook {
  readonly size?: number;
  /** Least height of a row, mm. */
  readonly rowHeight?: number;
  /** Ground of a row, where it has one. */
  readonly ground?: (row: number) => Ink | null;
  /** What stands over the table, on the same page as its first rows. */
  readonly over?: { readonly heading: string; readonly note?: string };
  /** A note that stays with its last rows. */
  readonly under?: string;
}

/** Blank under a table, mm. */
const noteGap = 2.5;

/** Rows that stay together at the beginning and at the end of a table that goes over pages. */
const together = 3;

/** Blank beside and over a cell's text, mm. */
const pad = 1.4;
const padUp = 0.8;

/** Draws `rows` of texts under the columns' titles at the flow's place. */
export function table(
  flow: Flow,
  columns: readonly Column[],
  rows: readonly (readonly string[])[],
  { size = 8.5, rowHeight = 5.9, ground = () => null, over, under }: TableLook = {},
): void {
  const shares = columns.reduce((sum, { share }) => sum + share, 0);
  let x = flow.left;
  const placed = columns.map((column) => {
    const width = (flow.width * column.share) / shares;
    const here = { column, x, width };
    x += width;
    return here;
  });
  const step = leading(size);
  const cells = (texts: readonly string[], bold: boolean) =>
    placed.map(({ column, width }, at) =>
      wrapped(flow.ruler, texts[at] ?? '', width - 2 * pad, size, bold || column.bold === true),
    );
  const heightOf = (lines: readonly (readonly string[])[]) =>
    Math.max(...lines.map((one) => one.length)) * step + 2 * padUp;
  const head = cells(
    columns.map(({ title }) => title),
    true,
  );
  const headHeight = heightOf(head);

  const writeRow = (lines: readonly (readonly string[])[], height: number, isHead: boolean) => {
    placed.forEach(({ column, x: left, width }, at) => {
      if (!isHead && column.blank === 'write') {
        flow.draw(
          box([left + 0.6, flow.y + 0.6, width - 1.2, height - 1.2], {
            stroke: inks.line,
            fill: inks.white,
          }),
        );
      }
      const own = lines[at] ?? [];
      const top = flow.y + (height - own.length * step) / 2 + 0.76 * step;
      const { align = 'left' } = column;
      const anchor = { left: left + pad, middle: left + width / 2, right: left + width - pad };
      const look = { size, bold: isHead || column.bold === true, align };
      const ink = isHead ? inks.white : inks.ink;
      flow.draw(...stacked(flow.ruler, own, anchor[align], top, { ...look, ink }));
      if (!isHead && column.blank === 'tick') {
        const side = Math.min(3.6, height - 1.6);
        flow.draw(
          box([left + (width - side) / 2, flow.y + (height - side) / 2, side, side], {
            stroke: inks.soft,
            width: 0.25,
          }),
        );
      }
    });
  };
  const writeHead = () => {
    flow.draw(
      box([flow.left, flow.y, flow.width, headHeight], { stroke: null, fill: inks.accent }),
    );
    writeRow(head, headHeight, true);
    flow.y += headHeight;
  };

  const bodies = rows.map((texts) => {
    const lines = cells(texts, false);
    return { lines, height: Math.max(rowHeight, heightOf(lines)) };
  });
  const noteLook = { size: 8.5, ink: inks.soft };
  const below = under === undefined ? 0 : flow.tall(under, noteLook) + noteGap;
  const tall = (from: number, to?: number) =>
    bodies.slice(from, to).reduce((sum, { height }) => sum + height, to === undefined ? below : 0);
  // a table that takes less than half a page stays whole
  const whole = headHeight + tall(0);
  const kept = whole < flow.height / 2 ? whole : headHeight + tall(0, together);
  if (over) {
    const note = over.note === undefined ? 0 : flow.tall(over.note, noteLook) + 1.5;
    flow.heading(over.heading, note + kept);
    if (over.note !== undefined) {
      flow.paragraph(over.note, noteLook);
      flow.gap(1.5);
    }
  }
  flow.need(kept);
  writeHead();
  bodies.forEach(({ lines, height }, row) => {
    const isClose = row === bodies.length - together;
    if (row > 0 && flow.need(isClose ? tall(row) : height)) {
      flow.splits += 1;
      writeHead();
    }
    const fill = ground(row);
    if (fill) flow.draw(box([flow.left, flow.y, flow.width, height], { stroke: null, fill }));
    writeRow(lines, height, false);
    flow.y += height;
    flow.draw(line([flow.left, flow.y, flow.right, flow.y], { stroke: inks.line, width: 0.15 }));
  });
  flow.gap(noteGap);
  if (under !== undefined) flow.paragraph(under, noteLook);
}
