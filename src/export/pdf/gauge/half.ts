/** Half an outline at full size, as a card to hold against the basket. */
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
export const cutLine = { stroke: '#000000', width: 0.3 } as const;
/** Of the tick at each row. */
export const rowTick = { stroke: '#1f4e5f', width: 0.18 } as const;

/** Card beyond the outline, mm, and the room for texts at the middle line. */
const card = 26;
const foot = 4;

/**
 * The card beside the right half of a view. Its left edge is the basket's middle, its lower edge the
 * table; the basket's outer face runs along the cut line, with a tick where each row is widest.
 */
export function halfGauge(basket: Basket, ruler: Ruler, view: OutlineView): Drawing {
  const seen = outline(basket, view);
  const middle = (seen.left + seen.right) / 2;
  const reach = seen.right - middle;
  const height = seen.top + foot;
  const width = reach + card;
  const x = (mm: number) => mm - middle;
  const y = (mm: number) => seen.top + foot / 2 - mm;
  const edge = rightEdge(seen.silhouette, middle);
  const marks: Mark[] = [
    line([0, y(0), width, y(0)], { stroke: inks.soft, width: 0.25 }),
    line([0, y(0), 0, y(seen.top)], { stroke: inks.soft, dash: [3, 1.5], width: 0.25 }),
    line(
      edge.flatMap(([at, up]) => [x(at), y(up)]),
      cutLine,
    ),
    words(
      ruler,
      `${view === 'side' ? 'Side' : 'End'}: hold against the middle of the ${view === 'side' ? 'end' : 'side'}`,
      3,
      y(0) - 12,
      { size: 9, bold: true },
    ),
    words(ruler, 'table along this line', 3, y(0) - 2, { size: 8, ink: inks.soft }),
    words(ruler, 'middle of the basket', 4, y(seen.top / 2), {
      size: 8,
      ink: inks.soft,
      turn: 90,
      align: 'middle',
    }),
  ];
  let lastText = Number.POSITIVE_INFINITY;
  for (const { row, line: loop } of seen.rows) {
    if (row === 0) continue;
    const from = x((loop.at(-2) ?? 0) + halfWall(basket.plan, row));
    const level = y(loop.at(-1) ?? 0);
    const isTen = row % 5 === 0 || row === seen.rows.length - 1;
    marks.push(line([from, level, from + (isTen ? 9 : 5), level], rowTick));
    if (isTen || Math.abs(lastText - level) > 2.7) {
      marks.push(words(ruler, `${row}`, from + 10, level + 0.9, { size: 6.5, bold: isTen }));
      lastText = level;
    }
  }
  return { title: view === 'side' ? 'Side gauge' : 'End gauge', width, height, marks };
}

type Point = readonly [number, number];

/** The part of a counter-clockwise silhouette that climbs on the right of `middle`. */
function rightEdge(silhouette: readonly number[], middle: number): Point[] {
  const points: Point[] = [];
  for (let at = 0; at < silhouette.length; at += 2) {
    points.push([silhouette[at] ?? 0, silhouette[at + 1] ?? 0]);
  }
  const first = points.findIndex(([x]) => x > middle);
  const after = points.findIndex(([x], at) => at > first && x <= middle);
  return points.slice(first, after < 0 ? undefined : after);
}
