import { memo } from 'react';
import { compareChartWords } from '#words/compareCharts.ts';
import { unitWords } from '#words/units.ts';
import type { Unit } from '../../plan/schema.ts';
import { lengthTicks } from '../../plan/ticks.ts';
import { formatLength } from '../../plan/units.ts';
import type { ChartFrame } from '../chartFrame.ts';
import { xOf, yOf } from '../chartFrame.ts';

interface Props {
  /** Its levels are heights, mm. */
  readonly frame: ChartFrame;
  readonly unit: Unit;
}

const words = compareChartWords.byHeight;

/** Heights at the left, girths beneath, with fine lines through the plot. */
export const HeightAxes = memo(function HeightAxes({ frame, unit }: Props) {
  const { left, right, top, bottom } = frame;
  const plain = (mm: number) => formatLength(mm, unit, { withUnit: false });
  return (
    <g className="girth-axes">
      {lengthTicks(0, frame.rows, unit, (bottom - top) / 34).map((height) => (
        <g key={height} transform={`translate(0 ${yOf(frame, height).toFixed(1)})`}>
          <line className="girth-grid" x1={left} x2={right} />
          <text className="girth-tick" x={left - 7} dy="0.34em" textAnchor="end">
            {plain(height)}
          </text>
        </g>
      ))}
      {lengthTicks(frame.least, frame.most, unit, (right - left) / 62).map((girth) => (
        <g key={girth} transform={`translate(${xOf(frame, girth).toFixed(1)} 0)`}>
          <line className="girth-grid" y1={top} y2={bottom + 4} />
          <text className="girth-tick" y={bottom + 17} textAnchor="middle">
            {plain(girth)}
          </text>
        </g>
      ))}
      <text className="girth-axis-name" x={right} y={bottom + 32} textAnchor="end">
        {words.girthAxis(unitWords.length[unit])}
      </text>
      <text className="girth-axis-name" x={2} y={10}>
        {words.heightAxis(unitWords.length[unit])}
      </text>
      <line className="girth-base" x1={left} x2={right} y1={bottom} y2={bottom} />
    </g>
  );
});
