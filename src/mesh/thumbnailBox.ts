import type { FlatLine } from './flatLines.ts';
import type { Outline } from './outline.ts';

/** A basket's side as SVG path data in a box of 100 by 75, y down: its outer edge and a few rows. */
export interface Thumbnail {
  readonly body: string;
  readonly rows: string;
}

const [boxWidth, boxHeight] = [100, 75];
const margin = 4;
/** So many rows are drawn; more would run together. */
const mostRows = 9;
/** Points nearer to one another than this are one. */
const finest = 0.9;

/** What is drawn: an edge and rows in mm, y up. */
type Drawing = Pick<
  Outline,
  'silhouette' | 'rows' | 'left' | 'right' | 'bottom' | 'width' | 'height'
>;

/** A drawing as large as the box allows, standing on the box's floor. */
export function drawnInBox(drawing: Drawing): Thumbnail {
  const { silhouette, rows, left, right, bottom, width, height } = drawing;
  const scale = Math.min(
    (boxWidth - 2 * margin) / Math.max(1, width),
    (boxHeight - 2 * margin) / Math.max(1, height),
  );
  const place = (x: number, y: number): [number, number] => [
    boxWidth / 2 + (x - (left + right) / 2) * scale,
    boxHeight - margin - (y - bottom) * scale,
  ];
  const step = Math.max(1, Math.ceil((rows.length - 1) / mostRows));
  const shown = rows.filter(({ row }) => row > 0 && (rows.length - 1 - row) % step === 0);
  return {
    body: `${path(silhouette, place)}Z`,
    rows: shown.map(({ line }) => path(line, place)).join(''),
  };
}

function path(line: FlatLine, place: (x: number, y: number) => [number, number]): string {
  let text = '';
  let last: [number, number] | null = null;
  for (let at = 0; at + 1 < line.length; at += 2) {
    const point = place(line[at] ?? 0, line[at + 1] ?? 0);
    const isEnd = at + 3 >= line.length;
    if (last && !isEnd && Math.hypot(point[0] - last[0], point[1] - last[1]) < finest) continue;
    text += `${last ? 'L' : 'M'}${point[0].toFixed(1)} ${point[1].toFixed(1)}`;
    last = point;
  }
  return text;
}
