import { compareChartWords } from '#words/compareCharts.ts';
import type { GirthSurfaceProps } from '../GirthSurface.tsx';
import { GirthSurface } from '../GirthSurface.tsx';
import { PointedRow } from '../PointedRow.tsx';
import type { LinePoint } from './CompareLines.tsx';
import { CompareLines, MostApart } from './CompareLines.tsx';
import { plannedApart } from './plannedApart.ts';

export interface CompareDrawingProps extends GirthSurfaceProps {
  readonly girths: Readonly<Record<'a' | 'b', Float64Array>>;
  readonly blend: Float64Array | null;
  readonly edited: 'a' | 'b';
  readonly row: number | null;
  readonly onRow: (row: number | null) => void;
}

/** The two lines, what lies between them, and the points of one to take hold of. */
export function CompareDrawing(props: CompareDrawingProps) {
  const { girths, blend, edited, row, onRow, ...surface } = props;
  // of the planned girths, as the lines are: so it follows a point that is dragged
  const most = plannedApart(girths.a, girths.b);
  return (
    <GirthSurface
      {...surface}
      title={compareChartWords.drawing}
      line={girths[edited]}
      after={() => ''}
      onRow={(to) => onRow(to === 0 ? null : to)}
    >
      {(frame) => (
        <>
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
              level={most.row}
              a={most.a}
              b={most.b}
              unit={surface.unit}
              name={compareChartWords.row(most.row)}
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
        </>
      )}
    </GirthSurface>
  );
}

function pointsOf(girths: Float64Array): LinePoint[] {
  return Array.from(girths, (girth, level) => ({ level, girth }));
}
