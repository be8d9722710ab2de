import { girthLineWords } from '#words/girthLine.ts';
import { GirthLines } from './GirthLines.tsx';
import type { GirthSurfaceProps } from './GirthSurface.tsx';
import { GirthSurface } from './GirthSurface.tsx';
import type { Handle } from './handles.ts';
import { PointedRow } from './PointedRow.tsx';
import { StretchNotes } from './StretchNotes.tsx';
import type { Stretch } from './stretches.ts';
import { stretchPhrase } from './stretches.ts';

export interface GirthDrawingProps extends GirthSurfaceProps {
  /** Planned girth by row from the base, and tape girth from row 1, mm. */
  readonly planned: Float64Array;
  readonly tape: Float64Array;
  readonly stretches: readonly Stretch[];
  readonly row: number | null;
  readonly onRow: (row: number | null) => void;
}

/** The lines, their notes, and the points to take hold of. */
export function GirthDrawing(props: GirthDrawingProps) {
  const { planned, tape, stretches, row, onRow, ...surface } = props;
  const { unit } = surface;
  const after = (handle: Handle) => {
    const next = stretches.find(({ from }) => from === handle.row);
    return next && handle.kind === 'point'
      ? girthLineWords.handle.afterIt(stretchPhrase(next, unit))
      : '';
  };
  return (
    <GirthSurface
      {...surface}
      title={girthLineWords.drawing}
      line={planned}
      after={after}
      onRow={onRow}
    >
      {(frame) => (
        <>
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
        </>
      )}
    </GirthSurface>
  );
}
