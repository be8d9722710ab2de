import type { PlaceDifference } from '../../model/compare/differences.ts';
import { restingLength } from '../../plan/lengthStep.ts';
import type { Unit } from '../../plan/schema.ts';
import type { ChartFrame } from '../chartFrame.ts';
import { isOnLine } from '../chartFrame.ts';
import { GirthAxes } from '../GirthAxes.tsx';
import { GirthHandle } from '../GirthHandle.tsx';
import type { Handle } from '../handles.ts';
import { PointedRow } from '../PointedRow.tsx';
import type { ChartSize } from '../useChartSize.ts';
import type { useGirthDesk } from '../useGirthDesk.ts';
import { useGirthPointer } from '../useGirthPointer.ts';
import type { LinePoint } from './CompareLines.tsx';
import { CompareLines, MostApart } from './CompareLines.tsx';

export interface CompareDrawingProps {
  readonly size: ChartSize;
  readonly frame: ChartFrame;
  readonly girths: Readonly<Record<'a' | 'b', Float64Array>>;
  readonly blend: Float64Array | null;
  readonly edited: 'a' | 'b';
  readonly handles: readonly Handle[];
  readonly most: PlaceDifference | null;
  readonly unit: Unit;
  readonly row: number | null;
  readonly onRow: (row: number | null) => void;
  readonly desk: ReturnType<typeof useGirthDesk>;
}

/** The two lines, what lies between them, and the points of one to take hold of. */
export function CompareDrawing(props: CompareDrawingProps) {
  const { size, girths, blend, edited, handles, most, unit, row, desk } = props;
  const own = girths[edited];
  const { drawing, frame, isDragging, listeners } = useGirthPointer({
    frame: props.frame,
    handles,
    onGrab: desk.grab,
    onMove: (handle, to, girth, drag) => desk.move(handle, to, restingLength(girth, unit), drag),
    onAdd(at, girth) {
      const to = Math.min(own.length - 1, Math.max(1, at));
      const line = own[to] ?? girth;
      desk.add(to, isOnLine(props.frame, girth, line) ? line : restingLength(girth, unit));
    },
    onRemove: desk.remove,
    onRow: (to) => props.onRow(to === 0 ? null : to),
  });
  return (
    <svg
      ref={drawing}
      className={isDragging ? 'girth-drawing girth-dragging' : 'girth-drawing'}
      width={size.width}
      height={size.height}
      viewBox={`0 0 ${size.width} ${size.height}`}
      onBlur={desk.endRun}
      {...listeners}
    >
      <title>Two girth lines: rows go up, girth goes out to the right</title>
      <svg aria-hidden="true">
        <GirthAxes frame={frame} unit={unit} />
        <CompareLines
          frame={frame}
          a={pointsOf(girths.a)}
          b={pointsOf(girths.b)}
          blend={blend ? pointsOf(blend) : []}
          sharedTo={Math.min(girths.a.length, girths.b.length) - 1}
        />
        {most && (
          <MostApart
            frame={frame}
            level={most.place}
            a={girths.a[most.place] ?? Number.NaN}
            b={girths.b[most.place] ?? Number.NaN}
            difference={most.difference}
            unit={unit}
            name={`row ${most.place}`}
          />
        )}
        {row !== null && row <= frame.rows && (
          <PointedRow
            frame={frame}
            row={row}
            planned={girths.a[row] ?? Number.NaN}
            tape={girths.b[row] ?? Number.NaN}
          />
        )}
      </svg>
      {handles.map((handle) => (
        <GirthHandle
          key={handle.key}
          handle={handle}
          frame={frame}
          unit={unit}
          isChosen={handle.key === desk.chosen?.key}
          after=""
          onChoose={desk.choose}
          onMove={desk.step}
          onAdd={desk.addAfter}
          onRemove={desk.remove}
        />
      ))}
    </svg>
  );
}

function pointsOf(girths: Float64Array): LinePoint[] {
  return Array.from(girths, (girth, level) => ({ level, girth }));
}
