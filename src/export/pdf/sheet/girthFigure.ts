/** The girth line: rows going up, tape girth going out, with the girth written at the turns. */
import { sheetChartWords } from '#words/sheetChart.ts';
import { unitWords } from '#words/units.ts';
import type { Basket } from '../../../model/basket.ts';
import { lengthTicks, rowTicks } from '../../../plan/ticks.ts';
import { formatChange, formatLength, shownChange } from '../../../plan/units.ts';
import type { Mark } from '../page/mark.ts';
import { box, inks, line } from '../page/mark.ts';
import type { Ruler } from '../page/ruler.ts';
import { words } from '../page/words.ts';

const w = sheetChartWords.line;
const bare = { withUnit: false };

/** The drawing in a place `width` × `height` mm from its upper left corner. */
export function girthFigure(
  { plan, rows }: Basket,
  ruler: Ruler,
  left: number,
  top: number,
  width: number,
  height: number,
): Mark[] {
  const { unit } = plan.display;
  const girths = rows.map(({ tapeGirth }) => tapeGirth);
  const count = rows.length;
  const [low, high] = [Math.min(...girths), Math.max(...girths)];
  const spread = Math.max(high - low, 0.1 * high);
  const plot = {
    left: left + 12,
    right: left + width - 4,
    top: top + 3,
    bottom: top + height - 11,
  };
  const first = low - 0.9 * spread;
  const last = high + 0.9 * spread;
  const x = (girth: number) =>
    plot.left + ((girth - first) / (last - first)) * (plot.right - plot.left);
  const y = (row: number) => plot.bottom - (row / count) * (plot.bottom - plot.top);
  const grid: Mark[] = [];
  for (const girth of lengthTicks(first, last, unit, 9)) {
    grid.push(
      line([x(girth), plot.top, x(girth), plot.bottom], { stroke: inks.faint }),
      words(ruler, formatLength(girth, unit, bare), x(girth), plot.bottom + 4, {
        size: 7.5,
        ink: inks.soft,
        align: 'middle',
      }),
    );
  }
  for (const row of rowTicks(count, (plot.bottom - plot.top) / 5).filter((one) => one > 0)) {
    grid.push(
      line([plot.left, y(row), plot.right, y(row)], { stroke: inks.faint, width: 0.12 }),
      words(ruler, `${row}`, plot.left - 1.5, y(row) + 1, {
        size: 7.5,
        ink: inks.soft,
        align: 'right',
      }),
    );
  }
  const told = new Set([1, ...plan.girthLine.points.map(({ row }) => row), count]);
  const notes = [...told].toSorted((one, other) => one - other);
  return [
    ...grid,
    box([plot.left, plot.top, plot.right - plot.left, plot.bottom - plot.top], {
      stroke: inks.line,
    }),
    line(
      rows.flatMap(({ row, tapeGirth }) => [x(tapeGirth), y(row)]),
      { stroke: inks.accent, width: 0.6 },
    ),
    ...notes.flatMap((row, at): Mark[] => {
      const girth = girths[row - 1] ?? low;
      const before = notes[at - 1];
      const [cx, cy] = [x(girth), y(row)];
      const text = formatLength(girth, unit);
      const label =
        before === undefined
          ? w.first(row, text)
          : w.since(
              row,
              text,
              formatChange(shownChange(girths[before - 1] ?? girth, girth, unit), unit, bare),
              before,
            );
      const long = ruler.width(label, 7.5, false);
      const aside = labelAside(girths, row);
      // where there is no room to the left it goes over to the right, above the line
      const isLeft = aside.left && cx - 2.4 - long > plot.left + 1;
      const start = isLeft ? cx - 2.4 - long : cx + 2.4;
      const level = cy + (isLeft === aside.left ? aside.lower : -2.6);
      return [
        line([cx - 0.9, cy, cx, cy - 0.9, cx + 0.9, cy, cx, cy + 0.9], {
          closed: true,
          stroke: inks.accent,
          fill: inks.white,
          width: 0.3,
        }),
        box([start - 0.6, level - 2, long + 1.2, 3.6], { stroke: null, fill: inks.white }),
        words(ruler, label, start, level + 0.9, { size: 7.5 }),
      ];
    }),
    words(ruler, w.girth(unitWords.length[unit]), (plot.left + plot.right) / 2, plot.bottom + 8.5, {
      size: 7.5,
      ink: inks.soft,
      align: 'middle',
    }),
    words(ruler, w.row, left + 3, (plot.top + plot.bottom) / 2, {
      size: 7.5,
      ink: inks.soft,
      align: 'middle',
      turn: 90,
    }),
  ];
}

/** Where a label keeps clear of the line: to the left, and how far below the point, mm. */
function labelAside(girths: readonly number[], row: number) {
  const here = girths[row - 1] ?? 0;
  const below = girths[Math.max(0, row - 3)] ?? here;
  const above = girths[Math.min(girths.length - 1, row + 1)] ?? here;
  // under row 1 stand the numbers of the axis
  if (row === 1 && above > here) return { left: true, lower: 0 };
  if (below > here && above >= here) return { left: true, lower: 0 };
  if (below <= here && above <= here) return { left: false, lower: 0 };
  return above > here ? { left: false, lower: 2.6 } : { left: false, lower: -2.6 };
}
