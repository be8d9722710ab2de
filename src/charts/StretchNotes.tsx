import { memo } from 'react';
import type { Unit } from '../plan/schema.ts';
import type { ChartFrame } from './chartFrame.ts';
import { xOf, yOf } from './chartFrame.ts';
import type { Stretch } from './stretches.ts';
import { stretchNote } from './stretches.ts';

/** Room for a note, which is two lines of writing, px. */
const noteHeight = 29;

export interface StretchNotesProps {
  readonly frame: ChartFrame;
  readonly planned: Float64Array;
  /** Tape girth by row, mm; index 0 is row 1. */
  readonly tape: Float64Array;
  readonly stretches: readonly Stretch[];
  readonly unit: Unit;
}

/** How each stretch lets out or pulls in, written outside the line. */
export const StretchNotes = memo(function StretchNotes(props: StretchNotesProps) {
  const { frame, planned, tape, stretches, unit } = props;
  let free = frame.bottom - 20;
  return (
    <g className="girth-notes">
      {stretches.map((stretch) => {
        const middle = (yOf(frame, stretch.from) + yOf(frame, stretch.to)) / 2;
        const y = Math.max(frame.top + 4, Math.min(middle, free));
        free = y - noteHeight;
        const { act, amount } = stretchNote(stretch, unit);
        const x = Math.min(outside(frame, planned, tape, y) + 12, frame.right - noteWidth(amount));
        return (
          <text key={stretch.from} x={x} y={y}>
            <tspan className="girth-note-act">{act}</tspan>
            <tspan className="girth-note-amount" x={x} dy="1.15em">
              {amount}
            </tspan>
          </text>
        );
      })}
    </g>
  );
});

/** About the width of a note by its longer line, px. */
function noteWidth(amount: string): number {
  return Math.max(7, amount.length) * 6.7;
}

/** x of the outermost line beside a note at `y`, px. */
function outside(frame: ChartFrame, planned: Float64Array, tape: Float64Array, y: number): number {
  const perRow = (frame.bottom - frame.top) / frame.rows;
  const middle = (frame.bottom - y) / perRow;
  const half = noteHeight / 2 / perRow;
  let widest = frame.least;
  const last = Math.min(frame.rows, Math.ceil(middle + half));
  for (let row = Math.max(0, Math.floor(middle - half)); row <= last; row++) {
    widest = Math.max(widest, planned[row] ?? 0, tape[row - 1] ?? 0);
  }
  return xOf(frame, widest);
}
