import { memo } from 'react';
import type { ChartFrame } from './chartFrame.ts';
import { girthPath, xOf, yOf } from './chartFrame.ts';

export interface GirthLinesProps {
  readonly frame: ChartFrame;
  /** Planned girth by row, mm; index 0 is the base. */
  readonly planned: Float64Array;
  /** Tape girth reached by the settled basket, mm; index 0 is row 1. */
  readonly tape: Float64Array;
}

/** The planned line, the body at its left, and the thinner line of what the tape will read. */
export const GirthLines = memo(function GirthLines({ frame, planned, tape }: GirthLinesProps) {
  const line = girthPath(frame, planned, 0);
  const top = yOf(frame, planned.length - 1).toFixed(1);
  const base = planned[0] ?? 0;
  return (
    <g>
      <path
        className="girth-body"
        d={`${line}L${frame.left},${top}L${frame.left},${frame.bottom}Z`}
      />
      <path className="girth-tape" d={girthPath(frame, tape, 1)} />
      <path className="girth-planned" d={line} />
      <circle className="girth-base-point" cx={xOf(frame, base)} cy={frame.bottom} r={4} />
    </g>
  );
});
