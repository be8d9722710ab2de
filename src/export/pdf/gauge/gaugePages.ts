/** Full-size gauges, as pages. */
import { gaugeWords as w } from '#words/gauges.ts';
import { pdfPageWords } from '#words/pdfPage.ts';
import type { Basket } from '../../../model/basket.ts';
import { formatLength } from '../../../plan/units.ts';
import { footLine, margin } from '../page/flow.ts';
import type { Mark, Page } from '../page/mark.ts';
import { inks } from '../page/mark.ts';
import type { Paper } from '../page/paper.ts';
import { paperSize } from '../page/paper.ts';
import type { Ruler } from '../page/ruler.ts';
import { words } from '../page/words.ts';
import { baseTemplate } from './baseTemplate.ts';
import { barRoom, checkBars } from './checkBars.ts';
import { halfGauge } from './half.ts';
import { glue, stripHeight, tapeStrip } from './tapeStrip.ts';
import { tiles } from './tiles.ts';

interface Leaf {
  readonly title: string;
  readonly note: string;
  readonly marks: readonly Mark[];
}

/** Side gauge, end gauge, tape strip and base template, each on as many pages as it needs. */
export function gaugePages(basket: Basket, ruler: Ruler, paper: Paper, day: string): Page[] {
  const size = paperSize[paper];
  const tiled = (drawing: Parameters<typeof tiles>[0], note: string): Leaf[] =>
    tiles(drawing, ruler, size).map(({ title, marks }) => ({ title, note, marks }));
  const leaves: Leaf[] = [
    ...tiled(halfGauge(basket, ruler, 'side'), w.half.note),
    ...tiled(halfGauge(basket, ruler, 'end'), w.half.note),
    ...stripLeaves(basket, ruler, size),
    ...tiled(baseTemplate(basket, ruler), w.base.note[basket.plan.base.kind]),
  ];
  return leaves.map(({ title, note, marks }, at) => ({
    ...size,
    marks: [
      ...checkBars(ruler, size),
      words(ruler, title, margin.side, barRoom + 6, { size: 12, bold: true, ink: inks.accent }),
      words(ruler, note, size.width - margin.side, barRoom + 6, {
        size: 8,
        ink: inks.soft,
        align: 'right',
      }),
      ...marks,
      ...footLine(
        ruler,
        size,
        w.foot(basket.plan.name, day),
        pdfPageWords.page(at + 1, leaves.length),
      ),
    ],
  }));
}

/** Pieces of the tape strip below one another. */
function stripLeaves(
  basket: Basket,
  ruler: Ruler,
  size: { width: number; height: number },
): Leaf[] {
  const pieces = tapeStrip(basket, ruler, size.width - 2 * margin.side);
  const top = barRoom + 14;
  const step = stripHeight + 7;
  const onPage = Math.max(1, Math.floor((size.height - top - margin.bottom + 7) / step));
  const count = Math.ceil(pieces.length / onPage);
  return Array.from({ length: count }, (_, leaf): Leaf => {
    const own = pieces.slice(leaf * onPage, (leaf + 1) * onPage);
    return {
      title: count > 1 ? w.strip.titleOf(leaf + 1, count) : w.strip.title,
      note: w.strip.note(formatLength(glue, 'mm')),
      marks: own.flatMap(({ marks }, at) => moved(marks, margin.side, top + at * step)),
    };
  });
}

function moved(marks: readonly Mark[], dx: number, dy: number): Mark[] {
  return marks.map((mark) =>
    mark.kind === 'text'
      ? { ...mark, x: mark.x + dx, y: mark.y + dy }
      : { ...mark, points: mark.points.map((value, at) => value + (at % 2 === 0 ? dx : dy)) },
  );
}
