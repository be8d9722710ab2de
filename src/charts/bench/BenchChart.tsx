import { useMemo } from 'react';
import { benchChartWords } from '#words/benchCharts.ts';
import type { Unit } from '../../plan/schema.ts';
import { formatLength } from '../../plan/units.ts';
import { chartFrame, girthPath, xOf, yOf } from '../chartFrame.ts';
import { GirthAxes } from '../GirthAxes.tsx';
import { useChartSize } from '../useChartSize.ts';
import './benchChart.css';

export interface BenchChartProps {
  /** Tape girth by row, mm: of the old plan, and of the basket as woven and replanned; index 0 is row 1. */
  readonly planned: readonly number[];
  readonly woven: readonly number[];
  /** Rows woven so far: up to here the second line is the basket, above it the replan. */
  readonly done: number;
  /** What was measured, mm. */
  readonly measured: readonly { readonly row: number; readonly girth: number }[];
  /** The row being woven. */
  readonly row: number;
  readonly unit: Unit;
}

const { keys } = benchChartWords;

/** Plan and basket as two girth lines, with a point for each row that was measured. */
export function BenchChart({ planned, woven, done, measured, row, unit }: BenchChartProps) {
  const [box, size] = useChartSize({ width: 340, height: 300 });
  const rows = planned.length;
  const frame = useMemo(
    () => chartFrame(size.width, size.height, rows, [...planned, ...woven]),
    [size, rows, planned, woven],
  );
  return (
    <figure className="bench-chart">
      <figcaption>
        <span className="bench-key bench-key-plan">{keys.plan}</span>
        <span className="bench-key bench-key-woven">{keys.woven}</span>
        <span className="bench-key bench-key-next">{keys.next}</span>
        <span className="bench-key bench-key-point">{keys.point}</span>
      </figcaption>
      <div className="bench-chart-box" ref={box}>
        <svg
          width={size.width}
          height={size.height}
          viewBox={`0 0 ${size.width} ${size.height}`}
          role="img"
          aria-label={inWords(measured, planned, unit)}
        >
          <GirthAxes frame={frame} unit={unit} />
          {row <= rows && (
            <line
              className="bench-row"
              x1={frame.left}
              x2={frame.right}
              y1={yOf(frame, row)}
              y2={yOf(frame, row)}
            />
          )}
          <path className="bench-plan" d={girthPath(frame, planned, 1)} />
          <path className="bench-woven" d={girthPath(frame, woven.slice(0, done), 1)} />
          <path
            className="bench-next"
            d={girthPath(frame, woven.slice(Math.max(0, done - 1)), Math.max(1, done))}
          />
          {measured.map((point) => (
            <circle
              key={point.row}
              className="bench-point"
              cx={xOf(frame, point.girth)}
              cy={yOf(frame, point.row)}
              r={5}
            />
          ))}
        </svg>
      </div>
    </figure>
  );
}

function inWords(
  measured: BenchChartProps['measured'],
  planned: readonly number[],
  unit: Unit,
): string {
  const points = measured.map(({ row, girth }) => {
    const plan = formatLength(planned[row - 1] ?? Number.NaN, unit);
    return benchChartWords.point(row, formatLength(girth, unit), plan);
  });
  return benchChartWords.picture(points);
}
