/** Half an outline at full size, as a card to hold against the basket. */
import { gaugeWords } from '#words/gauges.ts';
import type { OutlineView } from '../../../mesh/outline.ts';
import { outline } from '../../../mesh/outline.ts';
import type { Basket } from '../../../model/basket.ts';
import { halfWall } from '../../../model/read/wallThickness.ts';
import type { Mark } from '../page/mark.ts';
import { inks, line } from '../page/mark.ts';
import type { Ruler } from '../page/ruler.ts';
import { words } from '../page/words.ts';
import type { Drawing } from './tiles.ts';

/** Colour and width of the line to cut along: nothing else on these pages is drawn so. */
const cutLine = { stroke: '#000000', width: 0.3 } as const;
/** Of the tick at each row. */
const rowTick = { stroke: '#1f4e5f', width: 0.18 } as const;

/** Card beyond the outline, mm, and the room under the table's line. */
const card = 26;
const foot = 4;

/**
 * The card beside the right half of a view. Its left edge is the basket's middle, its lower edge the
 * table; the basket's outer face runs along the cut line from row 1 up, with a tick where each row is
 * widest.
 */
export function halfGauge(basket: Basket, ruler: Ruler, view: OutlineView): Drawing {
  const seen = outline(basket, view);
  const middle = (seen.left + seen.right) / 2;
  const width = seen.right - middle + card;
  const height = seen.top + foot;
  const table = seen.top + foot / 2;
  const tips = seen.rows.slice(1).map(({ row, line: loop }) => ({
    row,
    x: (loop.at(-2) ?? 0) + halfWall(basket.plan, row) - middle,
    y: table - (loop.at(-1) ?? 0),
  }));
  const [first, last] = [tips[0], tips.at(-1)];
  if (!first || !last) throw new RangeError('rows are none, allowed 1 and more');
  const w = gaugeWords.half;
  const soft = { size: 8, ink: inks.soft };
  const marks: Mark[] = [
    line([0, table, first.x, table], { stroke: inks.soft, width: 0.25 }),
    line([0, table, 0, last.y], { stroke: inks.soft, dash: [3, 1.5], width: 0.25 }),
    line(
      [
        ...[first.x, table],
        ...tips.flatMap(({ x, y }) => [x, y]),
        ...[width, last.y, width, table],
      ],
      { closed: true, ...cutLine },
    ),
    words(ruler, w.hold[view], width - 3, table - seen.top / 2, {
      size: 8,
      bold: true,
      turn: 90,
      align: 'middle',
    }),
    words(ruler, w.table, 3, table - 2, soft),
    words(ruler, w.middle, 4, table - seen.top / 2, {
      ...soft,
      turn: 90,
      align: 'middle',
    }),
  ];
  let lastText = Number.POSITIVE_INFINITY;
  for (const { row, x, y } of tips) {
    const isFifth = row % 5 === 0 || row === last.row;
    marks.push(line([x, y, x + (isFifth ? 9 : 5), y], rowTick));
    if (isFifth || Math.abs(lastText - y) > 2.7) {
      marks.push(words(ruler, `${row}`, x + 10, y + 0.9, { size: 6.5, bold: isFifth }));
      lastText = y;
    }
  }
  return { title: w.title[view], width, height, marks };
}
