/** Tape girth of two baskets, rows or heights going up, with the place where they differ most. */
import { comparePageWords } from '#words/comparePage.ts';
import { unitWords } from '#words/units.ts';
import type { Differences, PlaceDifference } from '../../../model/compare/differences.ts';
import type { Unit } from '../../../plan/schema.ts';
import { lengthTicks, rowTicks } from '../../../plan/ticks.ts';
import { formatChange, formatLength, shownChange } from '../../../plan/units.ts';
import type { Mark } from '../page/mark.ts';
import { box, inks, line } from '../page/mark.ts';
import type { Ruler } from '../page/ruler.ts';
import { words } from '../page/words.ts';
import { sideInk } from './sideInk.ts';

const { axis } = comparePageWords;

/** Least room for a number of the axes, mm. */
const tickWidth = 11;
const tickHeight = 7;

/** The drawing in a place `width` × `height` mm from its upper left corner. */
export function girthLines(
  { by, places, most }: Differences,
  unit: Unit,
  ruler: Ruler,
  [left, top, width, height]: readonly [number, number, number, number],
): Mark[] {
  const level = (place: PlaceDifference) => (by === 'row' ? place.place : place.height);
  const girths = places.flatMap(({ a, b }) => [a, b]).filter(Number.isFinite);
  if (girths.length === 0) return [];
  const [low, high] = [Math.min(...girths), Math.max(...girths)];
  const spread = Math.max(high - low, 0.1 * high);
  const [first, last] = [low - 0.15 * spread, high + 0.15 * spread];
  const highest = Math.max(...places.map(level), 1);
  const plot = { left: left + 10, right: left + width, top: top + 2, bottom: top + height - 9 };
  const x = (girth: number) =>
    plot.left + ((girth - first) / (last - first)) * (plot.right - plot.left);
  const y = (at: number) => plot.bottom - (at / highest) * (plot.bottom - plot.top);
  const small = { size: 7, ink: inks.soft };
  const bare = { withUnit: false };
  const marks: Mark[] = [];
  for (const girth of lengthTicks(first, last, unit, (plot.right - plot.left) / tickWidth)) {
    marks.push(
      line([x(girth), plot.top, x(girth), plot.bottom], { stroke: inks.faint }),
      words(ruler, formatLength(girth, unit, bare), x(girth), plot.bottom + 3.6, {
        ...small,
        align: 'middle',
      }),
    );
  }
  const levelCount = (plot.bottom - plot.top) / tickHeight;
  const levels =
    by === 'row'
      ? rowTicks(highest, levelCount).filter((row) => row > 0)
      : lengthTicks(0, highest, unit, levelCount);
  for (const at of levels) {
    const name = by === 'row' ? `${at}` : formatLength(at, unit, bare);
    marks.push(
      line([plot.left, y(at), plot.right, y(at)], { stroke: inks.faint }),
      words(ruler, name, plot.left - 1.2, y(at) + 0.9, { ...small, align: 'right' }),
    );
  }
  const shared = places.filter(({ difference }) => Number.isFinite(difference));
  const along = (side: 'a' | 'b', of: readonly PlaceDifference[]) =>
    of.filter((one) => Number.isFinite(one[side])).flatMap((one) => [x(one[side]), y(level(one))]);
  const area = [...along('a', shared), ...along('b', shared.toReversed())];
  marks.push(
    line(area, { closed: true, stroke: null, fill: '#e9dcc0' }),
    box([plot.left, plot.top, plot.right - plot.left, plot.bottom - plot.top], {
      stroke: inks.line,
    }),
    line(along('a', places), { ...sideInk.a, width: 0.6 }),
    line(along('b', places), { ...sideInk.b, width: 0.6 }),
    words(
      ruler,
      axis.girth(unitWords.length[unit]),
      (plot.left + plot.right) / 2,
      plot.bottom + 7.6,
      {
        ...small,
        align: 'middle',
      },
    ),
    words(ruler, axis[by](unitWords.length[unit]), left + 2.6, (plot.top + plot.bottom) / 2, {
      ...small,
      align: 'middle',
      turn: 90,
    }),
  );
  if (most) {
    const at = y(level(most));
    const [from, to] = [x(Math.min(most.a, most.b)), x(Math.max(most.a, most.b))];
    const text = formatChange(shownChange(most.a, most.b, unit), unit);
    const long = ruler.width(text, 8, true);
    const beside = to + long + 3 < plot.right ? to + 1.6 : from - 1.6 - long;
    const between = (from + to - long) / 2;
    const isAside = beside > plot.left + 1;
    const under = at - 4 < plot.top ? 4 : -1.4;
    marks.push(
      line([from, at, to, at], { width: 0.4 }),
      line([from, at - 1.2, from, at + 1.2], { width: 0.4 }),
      line([to, at - 1.2, to, at + 1.2], { width: 0.4 }),
      words(ruler, text, isAside ? beside : between, at + (isAside ? 1 : under), {
        size: 8,
        bold: true,
      }),
    );
  }
  return marks;
}
