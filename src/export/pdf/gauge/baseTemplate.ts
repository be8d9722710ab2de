/** The base at full size with the place of every stake, to true it by. */
import { gaugeWords } from '#words/gauges.ts';
import type { Basket } from '../../../model/basket.ts';
import type { Plan } from '../../../plan/schema.ts';
import { formatLength } from '../../../plan/units.ts';
import type { Mark } from '../page/mark.ts';
import { inks, line } from '../page/mark.ts';
import type { Ruler } from '../page/ruler.ts';
import { words } from '../page/words.ts';
import { between } from '../picture/camera.ts';
import type { Drawing } from './tiles.ts';

/** Of the base's edge. */
const baseLine = { stroke: '#000000', width: 0.35 } as const;
/** Of the two edges of a stake. */
const stakeLine = { stroke: '#1f4e5f', width: 0.12 } as const;

const diagonalLine = { stroke: inks.line, width: 0.2, dash: [4, 2] };

/** How far the stakes are drawn beyond the base's edge, mm. */
const beyond = 10;

/** Room for the sizes under all lines, mm: over them they would hide an edge that the base is laid to. */
const labelRoom = 5;

/** The flat base as it is laid out, before its middle is pushed in. */
export function baseTemplate({ net, plan, summary }: Basket, ruler: Ruler): Drawing {
  const at = (node: number): readonly [number, number] => [
    net.start[3 * node] ?? 0,
    -(net.start[3 * node + 1] ?? 0),
  ];
  const edge = Array.from(net.rows[0]?.nodes ?? [], at);
  const stakes = net.stakes.flatMap((stake) => {
    const [from, to] = stake.edge;
    const last = to < 0 ? stake.nodes.length - 1 : to;
    const path = Array.from(stake.nodes.slice(Math.max(0, from), last + 1), at);
    const whole = stretched(path, beyond);
    const drawn = whole.slice(from < 0 ? 1 : 0, to < 0 ? -1 : undefined);
    return [{ path: drawn, width: stake.strand.width }];
  });
  const outline = isSquareCut(plan.base) ? corners(edge) : rounded(edge);
  const all = [...outline, ...stakes.flatMap(({ path }) => path)];
  const left = Math.min(...all.map(([x]) => x)) - 2;
  const top = Math.min(...all.map(([, y]) => y)) - 2;
  const width = Math.max(...all.map(([x]) => x)) + 2 - left;
  const height = Math.max(...all.map(([, y]) => y)) + 2 - top;
  const placed = (path: readonly (readonly [number, number])[]) =>
    path.flatMap(([x, y]) => [x - left, y - top]);
  const text = (mm: number) => formatLength(mm, plan.display.unit);
  const marks: Mark[] = [
    ...stakes.flatMap(({ path, width: wide }) =>
      [-1, 1].map((side) => line(placed(beside(path, (side * wide) / 2)), stakeLine)),
    ),
    ...diagonals(outline).map((path) => line(placed(path), diagonalLine)),
    line(placed(outline), { closed: true, ...baseLine }),
    line([-left - 6, -top, -left + 6, -top], { stroke: inks.warn, width: 0.25 }),
    line([-left, -top - 6, -left, -top + 6], { stroke: inks.warn, width: 0.25 }),
    words(
      ruler,
      gaugeWords.base.size(
        text(summary.baseLength),
        text(summary.baseWidth),
        text(summary.baseGirth),
      ),
      2,
      height + 3.5,
      { size: 8, bold: true },
    ),
  ];
  return { title: gaugeWords.base.title, width, height: height + labelRoom, marks };
}

type Point = readonly [number, number];

/** Whether the base is a rectangle with corners. */
function isSquareCut(base: Plan['base']): boolean {
  return base.kind === 'mat' || (base.kind === 'board' && base.shape === 'rectangle');
}

/** A smooth closed line through the points of a round edge. */
function rounded(edge: readonly Point[]): Point[] {
  const point = (at: number) => {
    const [x, y] = edge[(at + edge.length) % edge.length] ?? [0, 0];
    return [x, y, 0] as const;
  };
  return edge.flatMap((_, at) =>
    [0, 0.25, 0.5, 0.75].map((share): Point => {
      const [x, y] = between(point(at - 1), point(at), point(at + 1), point(at + 2), share);
      return [x, y];
    }),
  );
}

/** The rectangle round a mat's edge. */
function corners(edge: readonly Point[]): Point[] {
  const [xs, ys] = [edge.map(([x]) => x), edge.map(([, y]) => y)];
  const [west, east] = [Math.min(...xs), Math.max(...xs)];
  const [north, south] = [Math.min(...ys), Math.max(...ys)];
  return [
    [west, north],
    [east, north],
    [east, south],
    [west, south],
  ];
}

/** From corner to corner, where the outline has four of them. */
function diagonals([a, b, c, d, ...more]: readonly Point[]): (readonly Point[])[] {
  if (!a || !b || !c || !d || more.length > 0) return [];
  return [
    [a, c],
    [b, d],
  ];
}

/** A path with both ends drawn out straight by `by` mm. */
function stretched(path: readonly Point[], by: number): Point[] {
  const out = (from: Point | undefined, to: Point | undefined): Point[] => {
    if (!from || !to) return [];
    const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
    const share = by / (Math.hypot(dx, dy) || 1);
    return [[to[0] + share * dx, to[1] + share * dy]];
  };
  return [...out(path[1], path[0]), ...path, ...out(path.at(-2), path.at(-1))];
}

/** A path moved aside by `by` mm, square to its way at each point. */
function beside(path: readonly Point[], by: number): Point[] {
  return path.map(([x, y], at): Point => {
    const [before, after] = [path[Math.max(0, at - 1)], path[Math.min(path.length - 1, at + 1)]];
    if (!before || !after) return [x, y];
    const [dx, dy] = [after[0] - before[0], after[1] - before[1]];
    const size = Math.hypot(dx, dy) || 1;
    return [x - (by * dy) / size, y + (by * dx) / size];
  });
}
