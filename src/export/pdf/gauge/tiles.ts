/** A full-size drawing cut into pages, with marks to join them by. */

import { gaugeWords } from '#words/gauges.ts';
import { margin } from '../page/flow.ts';
import type { Mark } from '../page/mark.ts';
import { inks, line } from '../page/mark.ts';
import type { PaperSize } from '../page/paper.ts';
import type { Ruler } from '../page/ruler.ts';
import { words } from '../page/words.ts';
import { barRoom } from './checkBars.ts';
import { clipped } from './clip.ts';

/** Something at 1:1; x, y from its upper left corner, mm. */
export interface Drawing {
  readonly title: string;
  readonly width: number;
  readonly height: number;
  readonly marks: readonly Mark[];
}

/** One page's piece of a drawing. */
export interface Tile {
  readonly title: string;
  readonly marks: readonly Mark[];
  /** Where the drawing's upper left corner lies on the page, mm; off the page for later tiles. */
  readonly origin: readonly [number, number];
}

/** Strip that neighbouring pages have in common, mm. */
const overlap = 12;

/** Of a joining mark. */
const joinLine = { stroke: '#565f63', width: 0.2 } as const;

/** The drawing on as many pages as it needs, row by row. */
export function tiles(upright: Drawing, ruler: Ruler, paper: PaperSize): Tile[] {
  const left = margin.side;
  const top = barRoom + 12;
  const width = paper.width - 2 * margin.side;
  const height = paper.height - top - margin.bottom;
  const pages = (one: Drawing) => tilesOver(one.width, width) * tilesOver(one.height, height);
  const lying = turned(upright);
  const drawing = pages(lying) < pages(upright) ? lying : upright;
  const across = tilesOver(drawing.width, width);
  const down = tilesOver(drawing.height, height);
  const list: Tile[] = [];
  for (let row = 0; row < down; row += 1) {
    for (let column = 0; column < across; column += 1) {
      const origin = [left - column * (width - overlap), top - row * (height - overlap)] as const;
      const piece = `${letter(column)}${row + 1}`;
      const frame = [left, top, width, height] as const;
      const used = [
        Math.min(width, drawing.width + origin[0] - left),
        Math.min(height, drawing.height + origin[1] - top),
      ] as const;
      const edges = {
        east: column + 1 < across,
        west: column > 0,
        south: row + 1 < down,
        north: row > 0,
      };
      list.push({
        title:
          across * down > 1 ? gaugeWords.piece(drawing.title, piece, across, down) : drawing.title,
        origin,
        marks: [
          ...clipped(drawing.marks, origin, frame),
          ...joins(ruler, frame, used, edges, column, row),
        ],
      });
    }
  }
  return list;
}

/** The drawing a quarter turn counter-clockwise. */
function turned({ title, width, height, marks }: Drawing): Drawing {
  return {
    title,
    width: height,
    height: width,
    marks: marks.map((mark): Mark => {
      if (mark.kind === 'text') {
        return { ...mark, x: mark.y, y: width - mark.x, turn: mark.turn + 90 };
      }
      const points = mark.points.map((_, at) =>
        at % 2 === 0 ? (mark.points[at + 1] ?? 0) : width - (mark.points[at - 1] ?? 0),
      );
      return { ...mark, points };
    }),
  };
}

function tilesOver(length: number, page: number): number {
  return length <= page ? 1 : Math.ceil((length - overlap) / (page - overlap));
}

function letter(column: number): string {
  return String.fromCharCode(65 + (column % 26));
}

/** Crosses in the middle of each overlap, a third and two thirds along, the same on both pages. */
function joins(
  ruler: Ruler,
  [left, top, width, height]: readonly [number, number, number, number],
  used: readonly [number, number],
  edges: Readonly<Record<'east' | 'west' | 'south' | 'north', boolean>>,
  column: number,
  row: number,
): Mark[] {
  const marks: Mark[] = [];
  const cross = (x: number, y: number, text: string) => {
    marks.push(
      line([x - 4, y, x + 4, y], joinLine),
      line([x, y - 4, x, y + 4], joinLine),
      words(ruler, text, x + 1, y - 1, { size: 7, ink: inks.soft }),
    );
  };
  const half = overlap / 2;
  for (const third of [1, 2]) {
    const y = top + (third * used[1]) / 3;
    const x = left + (third * used[0]) / 3;
    if (edges.east) cross(left + width - half, y, `${letter(column)}${row + 1}·${third}`);
    if (edges.west) cross(left + half, y, `${letter(column - 1)}${row + 1}·${third}`);
    if (edges.south) cross(x, top + height - half, `${row + 1}${letter(column)}·${third}`);
    if (edges.north) cross(x, top + half, `${row}${letter(column)}·${third}`);
  }
  return marks;
}
