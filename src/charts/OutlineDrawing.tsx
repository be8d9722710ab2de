import { useId } from 'react';
import { drawingWords } from '#words/drawings.ts';
import type { Unit } from '../plan/schema.ts';
import { formatLength } from '../plan/units.ts';
import './charts.css';

/** x, y, x, y, … in mm; y up. */
type FlatLine = readonly number[];

/** The basket from one side, as flat lines (made by `mesh/outline.ts`). */
export interface OutlineLines {
  readonly silhouette: FlatLine;
  readonly rows: readonly { readonly row: number; readonly line: FlatLine }[];
  readonly stakes: readonly { readonly end: number; readonly line: FlatLine }[];
  readonly table: FlatLine;
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
  /** Height of the wall, mm. */
  readonly wall: number;
}

/** Rim and handle of the basket from the same side (made by `mesh/flatFinish.ts`). */
export interface FinishLines {
  readonly hoop: FlatLine;
  readonly handle: readonly FlatLine[];
  readonly left: number;
  readonly right: number;
  readonly top: number;
}

export interface OutlineDrawingProps {
  readonly outline: OutlineLines;
  readonly finish: FinishLines;
  /** Row to mark. */
  readonly row: number | null;
  readonly unit: Unit;
  readonly title: string;
}

/**
 * Where all of the drawing lies: x, y, width and height of it, y down, with its rightmost line and the
 * height of its letters, mm.
 */
export function outlineFrame(outline: OutlineLines, finish: FinishLines) {
  const first = Math.min(outline.left, finish.left);
  const last = Math.max(outline.right, finish.right);
  const highest = Math.max(outline.top, finish.top);
  const letter = Math.max(last - first, highest) * 0.042;
  const box = [
    first - letter,
    -highest - letter,
    last - first + letter * 10.5,
    highest + letter * 5.2,
  ] as const;
  return { last, letter, box };
}

/** One side of the basket as a line drawing with its width and height. */
export function OutlineDrawing({ outline, finish, row, unit, title }: OutlineDrawingProps) {
  const id = useId();
  const { left, right, wall, width } = outline;
  const { last, letter, box } = outlineFrame(outline, finish);
  const marked = outline.rows.find((one) => one.row === row);
  const size = { width: formatLength(width, unit), height: formatLength(wall, unit) };
  return (
    <figure className="outline">
      <svg className="outline-drawing" viewBox={box.join(' ')} role="img" aria-labelledby={id}>
        <title id={id}>{drawingWords.outline(title, size.width, size.height)}</title>
        {finish.handle.map((line) => (
          <path key={line.join()} className="outline-handle" d={`${flatPath(line)}Z`} />
        ))}
        <path className="outline-ground" d={`${flatPath(outline.silhouette)}Z`} />
        <path className="outline-body" d={`${flatPath(outline.silhouette)}Z`} />
        {outline.stakes.map(({ end, line }) => (
          <path key={end} className="outline-stake" d={flatPath(line)} />
        ))}
        {outline.rows.map(({ row: at, line }) => (
          <path key={at} className="outline-row" d={flatPath(line)} />
        ))}
        <path className="outline-edge" d={`${flatPath(outline.silhouette)}Z`} />
        <path className="outline-hoop" d={`${flatPath(finish.hoop)}Z`} />
        <path className="outline-table" d={flatPath(outline.table)} />
        {marked && <path className="outline-marked" d={flatPath(marked.line)} />}
        <g className="outline-size" fontSize={letter}>
          <path d={`M${left},${letter}H${right}`} />
          <text x={(left + right) / 2} y={letter * 2.15} textAnchor="middle">
            {size.width}
          </text>
          <path d={`M${last + letter},0V${-wall}`} />
          <text x={last + letter * 1.4} y={-wall / 2} dy="0.34em">
            {drawingWords.wall(size.height)}
          </text>
          {/* in the drawing, whose middle is not the figure's: at the right there is room for the height */}
          <text
            className="outline-title"
            x={(left + right) / 2}
            y={letter * 3.7}
            textAnchor="middle"
          >
            {title}
          </text>
        </g>
      </svg>
    </figure>
  );
}

/** SVG path of a line whose y goes up. */
export function flatPath(line: FlatLine): string {
  let path = '';
  for (let at = 0; at + 1 < line.length; at += 2) {
    path += `${at === 0 ? 'M' : 'L'}${(line[at] ?? 0).toFixed(2)},${(-(line[at + 1] ?? 0)).toFixed(2)}`;
  }
  return path;
}
