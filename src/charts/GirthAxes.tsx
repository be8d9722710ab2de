import { memo } from 'react';
import { girthLineWords } from '#words/girthLine.ts';
import { unitWords } from '#words/units.ts';
import type { Unit } from '../plan/schema.ts';
import { lengthTicks, rowTicks } from '../plan/ticks.ts';
import { formatLength } from '../plan/units.ts';
import type { ChartFrame } from './chartFrame.ts';
import { xOf, yOf } from './chartFrame.ts';

const { axes } = girthLineWords;

/** Rows at the left, girths beneath, with fine lines through the plot. */
export const GirthAxes = memo(function GirthAxes({
  frame,
  unit,
}: {
  readonly frame: ChartFrame;
  readonly unit: Unit;
}) {
  const { left, right, top, bottom } = frame;
  const girths = lengthTicks(frame.least, frame.most, unit, (right - left) / 62);
  return (
    <g className="girth-axes">
      {rowTicks(frame.rows, (bottom - top) / 34).map((row) => (
        <g key={row} transform={`translate(0 ${yOf(frame, row).toFixed(1)})`}>
          <line className="girth-grid" x1={left} x2={right} />
          <text className="girth-tick" x={left - 7} dy="0.34em" textAnchor="end">
            {row === 0 ? axes.base : row}
          </text>
        </g>
      ))}
      {girths.map((girth) => (
        <g key={girth} transform={`translate(${xOf(frame, girth).toFixed(1)} 0)`}>
          <line className="girth-grid" y1={top} y2={bottom + 4} />
          <text className="girth-tick" y={bottom + 17} textAnchor="middle">
            {formatLength(girth, unit, { withUnit: false })}
          </text>
        </g>
      ))}
      <text className="girth-axis-name" x={right} y={bottom + 32} textAnchor="end">
        {axes.girth(unitWords.length[unit])}
      </text>
      <text className="girth-axis-name" x={left - 7} y={10} textAnchor="end">
        {axes.row}
      </text>
      <line className="girth-base" x1={left} x2={right} y1={bottom} y2={bottom} />
    </g>
  );
});
