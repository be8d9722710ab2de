/** Side and end outline with their dimensions. */

import { outlineDrawingWords } from '#words/outlineDrawing.ts';
import type { FlatFinish } from '../../../mesh/flatFinish.ts';
import { flatFinish } from '../../../mesh/flatFinish.ts';
import type { Outline } from '../../../mesh/outline.ts';
import { outline } from '../../../mesh/outline.ts';
import type { Basket } from '../../../model/basket.ts';
import { formatLength } from '../../../plan/units.ts';
import type { Mark } from '../page/mark.ts';
import { box, inks, line } from '../page/mark.ts';
import type { Ruler } from '../page/ruler.ts';
import { words } from '../page/words.ts';
import { dimension, dimensionSize } from './dimension.ts';

/** Room for dimension lines round an outline, and over its handle, mm. */
const room = { left: 13, right: 4, top: 12, over: 2, bottom: 14 } as const;

/** Both outlines at one scale, and the height that they take, mm. */
export interface OutlineFigures {
  readonly marks: readonly Mark[];
  readonly height: number;
}

/** Side and end in a strip `width` mm wide and at most `height` high, from its upper left corner. */
export function outlineFigures(
  basket: Basket,
  ruler: Ruler,
  left: number,
  top: number,
  width: number,
  height: number,
): OutlineFigures {
  const [side, end] = [outline(basket, 'side'), outline(basket, 'end')];
  const finishes = { side: flatFinish(basket, 'side'), end: flatFinish(basket, 'end') };
  const wall = Math.max(side.top, end.top);
  const handle = Math.max(finishes.side.top, finishes.end.top);
  const own = 2 * (room.left + room.right) + 6;
  const scale = Math.min(
    (width - own) / (side.width + end.width),
    (height - room.top - room.bottom) / wall,
    (height - room.over - room.bottom) / handle,
  );
  const used = scale * (side.width + end.width) + own;
  const start = left + (width - used) / 2;
  const ground = top + Math.max(room.top + scale * wall, room.over + scale * handle);
  const second = start + room.left + scale * side.width + room.right + 6;
  const marks = [
    ...figure(basket, ruler, side, finishes.side, start + room.left, ground, scale),
    ...figure(basket, ruler, end, finishes.end, second + room.left, ground, scale),
  ];
  return { marks, height: ground + room.bottom - top };
}

function figure(
  basket: Basket,
  ruler: Ruler,
  drawn: Outline,
  finish: FlatFinish,
  left: number,
  ground: number,
  scale: number,
): Mark[] {
  const { unit } = basket.plan.display;
  const { view } = drawn;
  const x = (mm: number) => left + scale * (mm - drawn.left);
  const y = (mm: number) => ground - scale * mm;
  const placed = (flat: readonly number[]) =>
    flat.map((value, at) => (at % 2 === 0 ? x(value) : y(value)));
  const { summary } = basket;
  const rim = drawn.rows.at(-1)?.line ?? [];
  const across = view === 'side' ? summary.rim.length : summary.rim.width;
  const middle = ((rim[0] ?? 0) + (rim.at(-2) ?? 0)) / 2;
  const wall = y(drawn.wall);
  const base = view === 'side' ? summary.baseLength : summary.baseWidth;
  const text = (mm: number) => formatLength(mm, unit);
  const rimText = outlineDrawingWords.rim(text(across));
  const wide = ruler.width(rimText, dimensionSize, false) + 1.2;
  const ofFinish = (flat: readonly number[]) =>
    line(placed(flat), { closed: true, fill: inks.white, width: 0.25 });
  return [
    ...finish.handle.map(ofFinish),
    line(placed(drawn.silhouette), { closed: true, stroke: null, fill: inks.band }),
    ...drawn.rows
      .filter(({ row }) => row > 0)
      .map((row) => line(placed(row.line), { stroke: inks.line, width: 0.1 })),
    ...drawn.stakes.map((stake) => line(placed(stake.line), { stroke: inks.line, width: 0.1 })),
    line(placed(drawn.silhouette), { closed: true, width: 0.35 }),
    ofFinish(finish.hoop),
    line(placed(drawn.table), { stroke: inks.soft, width: 0.3 }),
    ...dimension(
      ruler,
      [x(drawn.left) - 5, ground],
      [x(drawn.left) - 5, wall],
      outlineDrawingWords.wall(text(drawn.wall)),
    ),
    // the handle goes through its text
    box([x(middle) - wide / 2, wall - 8.4, wide, 3.4], { stroke: null, fill: inks.white }),
    ...dimension(
      ruler,
      [x(middle - across / 2), wall - 4],
      [x(middle + across / 2), wall - 4],
      rimText,
    ),
    ...dimension(
      ruler,
      [x(drawn.left), ground + 6.4],
      [x(drawn.right), ground + 6.4],
      outlineDrawingWords.widest(text(drawn.width)),
    ),
    words(
      ruler,
      outlineDrawingWords.under[view](text(base)),
      (x(drawn.left) + x(drawn.right)) / 2,
      ground + 12.4,
      { size: 8, ink: inks.soft, align: 'middle' },
    ),
  ];
}
