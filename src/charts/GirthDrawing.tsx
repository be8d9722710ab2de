import { restingLength } from '../plan/lengthStep.ts';
import type { Unit } from '../plan/schema.ts';
import type { ChartFrame } from './chartFrame.ts';
import { isOnLine } from './chartFrame.ts';
import { GirthAxes } from './GirthAxes.tsx';
import { GirthHandle } from './GirthHandle.tsx';
import { GirthLines } from './GirthLines.tsx';
import type { Handle } from './handles.ts';
import { PointedRow } from './PointedRow.tsx';
import { StretchNotes } from './StretchNotes.tsx';
import type { Stretch } from './stretches.ts';
import { stretchPhrase } from './stretches.ts';
import type { ChartSize } from './useChartSize.ts';
import type { useGirthDesk } from './useGirthDesk.ts';
import { useGirthPointer } from './useGirthPointer.ts';

export interface GirthDrawingProps {
  readonly size: ChartSize;
  readonly frame: ChartFrame;
  /** Planned girth by row from the base, and tape girth from row 1, mm. */
  readonly planned: Float64Array;
  readonly tape: Float64Array;
  readonly stretches: readonly Stretch[];
  readonly handles: readonly Handle[];
  readonly unit: Unit;
  readonly row: number | null;
  readonly onRow: (row: number | null) => void;
  readonly desk: ReturnType<typeof useGirthDesk>;
}

/** The lines, their notes, and the points to take hold of. */
export function GirthDrawing(props: GirthDrawingProps) {
  const { size, planned, tape, stretches, handles, unit, row, desk } = props;
  const { drawing, frame, isDragging, listeners } = useGirthPointer({
    frame: props.frame,
    handles,
    onGrab: desk.grab,
    onMove: (handle, to, girth, drag) => desk.move(handle, to, restingLength(girth, unit), drag),
    onAdd(at, girth) {
      const to = Math.max(1, at);
      const line = planned[to] ?? girth;
      desk.add(to, isOnLine(props.frame, girth, line) ? line : restingLength(girth, unit));
    },
    onRemove: desk.remove,
    onRow: props.onRow,
  });
  const after = (handle: Handle) => {
    const next = stretches.find(({ from }) => from === handle.row);
    return next && handle.kind === 'point' ? `${stretchPhrase(next, unit)} after it` : '';
  };
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
      <title>Girth line: rows go up, girth goes out to the right</title>
      <svg aria-hidden="true">
        <GirthAxes frame={frame} unit={unit} />
        <GirthLines frame={frame} planned={planned} tape={tape} />
        {row !== null && row < planned.length && (
          <PointedRow
            frame={frame}
            row={row}
            planned={planned[row] ?? Number.NaN}
            tape={tape[row - 1] ?? Number.NaN}
          />
        )}
        <StretchNotes {...{ frame, planned, tape, stretches, unit }} />
      </svg>
      {handles.map((handle) => (
        <GirthHandle
          key={handle.key}
          handle={handle}
          frame={frame}
          unit={unit}
          isChosen={handle.key === desk.chosen?.key}
          after={after(handle)}
          onChoose={desk.choose}
          onMove={desk.step}
          onAdd={desk.addAfter}
          onRemove={desk.remove}
        />
      ))}
    </svg>
  );
}
