import type { ReactNode } from 'react';
import { restingLength } from '../plan/lengthStep.ts';
import type { Unit } from '../plan/schema.ts';
import type { ChartFrame } from './chartFrame.ts';
import { isOnLine } from './chartFrame.ts';
import { GirthAxes } from './GirthAxes.tsx';
import { GirthHandle } from './GirthHandle.tsx';
import type { Handle } from './handles.ts';
import type { ChartSize } from './useChartSize.ts';
import type { useGirthDesk } from './useGirthDesk.ts';
import { useGirthPointer } from './useGirthPointer.ts';

/** What every drawing of a girth line that can be edited is told. */
export interface GirthSurfaceProps {
  readonly size: ChartSize;
  readonly frame: ChartFrame;
  readonly handles: readonly Handle[];
  readonly unit: Unit;
  readonly desk: ReturnType<typeof useGirthDesk>;
}

interface Props extends GirthSurfaceProps {
  readonly title: string;
  /** The line that the handles belong to, by row from the base, mm. */
  readonly line: Float64Array;
  /** What a handle says of the line after it. */
  readonly after: (handle: Handle) => string;
  readonly onRow: (row: number | null) => void;
  /** Lines and notes, in the frame that is shown (it is held still during a drag). */
  readonly children: (frame: ChartFrame) => ReactNode;
}

/** The sheet that girth lines are drawn on, and the points to take hold of. */
export function GirthSurface(props: Props) {
  const { size, handles, unit, desk, line } = props;
  const { drawing, frame, isDragging, listeners } = useGirthPointer({
    frame: props.frame,
    handles,
    onGrab: desk.grab,
    onMove: (handle, to, girth, drag) => desk.move(handle, to, restingLength(girth, unit), drag),
    onAdd(at, girth) {
      const to = Math.min(line.length - 1, Math.max(1, at));
      const there = line[to] ?? girth;
      desk.add(to, isOnLine(props.frame, girth, there) ? there : restingLength(girth, unit));
    },
    onRemove: desk.remove,
    onRow: props.onRow,
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
      <title>{props.title}</title>
      <svg aria-hidden="true">
        <GirthAxes frame={frame} unit={unit} />
        {props.children(frame)}
      </svg>
      {handles.map((handle) => (
        <GirthHandle
          key={handle.key}
          handle={handle}
          frame={frame}
          unit={unit}
          isChosen={handle.key === desk.chosen?.key}
          after={props.after(handle)}
          onChoose={desk.choose}
          onMove={desk.step}
          onAdd={desk.addAfter}
          onRemove={desk.remove}
        />
      ))}
    </svg>
  );
}
