import { girthLineWords } from '#words/girthLine.ts';
import type { ChartFrame } from './chartFrame.ts';
import { xOf, yOf } from './chartFrame.ts';

export interface PointedRowProps {
  readonly frame: ChartFrame;
  readonly row: number;
  /** Planned girth and reached tape girth of the row, mm; not finite where there is none. */
  readonly planned: number;
  readonly tape: number;
}

/** A rule through the row that is pointed at, with its number at the axis. */
export function PointedRow({ frame, row, planned, tape }: PointedRowProps) {
  const y = yOf(frame, row);
  return (
    <g className="girth-pointed" transform={`translate(0 ${y.toFixed(1)})`}>
      <line x1={frame.left} x2={frame.right} />
      <rect x={2} y={-9} width={frame.left - 6} height={18} rx={3} />
      <text x={frame.left - 9} dy="0.34em" textAnchor="end">
        {row === 0 ? girthLineWords.axes.base : row}
      </text>
      {Number.isFinite(planned) && <circle cx={xOf(frame, planned)} r={3.5} />}
      {Number.isFinite(tape) && (
        <circle className="girth-pointed-tape" cx={xOf(frame, tape)} r={2.5} />
      )}
    </g>
  );
}
