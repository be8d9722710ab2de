import type { PointerEvent } from 'react';
import { useMemo } from 'react';
import { compareChartWords } from '#words/compareCharts.ts';
import type { RowReading } from '../../model/basket.ts';
import type { Differences, PlaceDifference } from '../../model/compare/differences.ts';
import type { Unit } from '../../plan/schema.ts';
import { formatLength } from '../../plan/units.ts';
import { chartFrame, yOf } from '../chartFrame.ts';
import { useChartSize } from '../useChartSize.ts';
import type { LinePoint } from './CompareLines.tsx';
import { CompareLines, MostApart } from './CompareLines.tsx';
import { CompareReadout } from './CompareReadout.tsx';
import { HeightAxes } from './HeightAxes.tsx';
import '../charts.css';
import './compare.css';

export interface HeightLinesProps {
  /** Rows of each settled basket, or of the little of them that stands up. */
  readonly rows: Readonly<Record<'a' | 'b', readonly RowReading[]>>;
  /** By height. */
  readonly differences: Differences;
  readonly place: number | null;
  readonly onPlace: (place: number | null) => void;
  readonly unit: Unit;
}

const words = compareChartWords.byHeight;

/** Tape girth of both baskets by height over the table: to be read, not dragged. */
export function HeightLines({ rows, differences, place, onPlace, unit }: HeightLinesProps) {
  const [box, size] = useChartSize({ width: 360, height: 380 });
  const { places, most } = differences;
  const [a, b] = useMemo(() => [standing(rows.a), standing(rows.b)], [rows]);
  const frame = useMemo(() => {
    const all = [...a, ...b];
    const highest = all.reduce((high, { level }) => Math.max(high, level), 1);
    return chartFrame(
      size.width,
      size.height,
      highest,
      all.map(({ girth }) => girth),
    );
  }, [size, a, b]);
  const pointed = places.find((one) => one.place === place) ?? null;
  const point = (event: PointerEvent<SVGSVGElement>) => {
    const y = event.clientY - event.currentTarget.getBoundingClientRect().top;
    onPlace(nearest(places, (one) => Math.abs(yOf(frame, one.height) - y))?.place ?? null);
  };
  return (
    <figure className="girth compare-girth">
      <figcaption className="girth-head">
        <span className="girth-title">{words.title}</span>
      </figcaption>
      <CompareReadout place={pointed} hasBlend={false} lines="tape" unit={unit} />
      <div className="girth-box" ref={box}>
        <svg
          className="girth-drawing"
          width={size.width}
          height={size.height}
          viewBox={`0 0 ${size.width} ${size.height}`}
          onPointerMove={point}
          onPointerDown={point}
          onPointerLeave={() => onPlace(null)}
          role="img"
          aria-label={words.drawing}
        >
          <HeightAxes frame={frame} unit={unit} />
          <CompareLines frame={frame} a={a} b={b} blend={[]} sharedTo={sharedTop(a, b)} />
          {most && (
            <MostApart
              frame={frame}
              level={most.height}
              a={most.a}
              b={most.b}
              unit={unit}
              name={formatLength(most.height, unit)}
            />
          )}
          {pointed && (
            <line
              className="compare-pointed"
              x1={frame.left}
              x2={frame.right}
              y1={yOf(frame, pointed.height)}
              y2={yOf(frame, pointed.height)}
            />
          )}
        </svg>
      </div>
      <p className="girth-hint">{words.hint}</p>
    </figure>
  );
}

/** Rows that stand higher than all before them, as points of a line. */
function standing(rows: readonly RowReading[]): LinePoint[] {
  let highest = Number.NEGATIVE_INFINITY;
  return rows.flatMap(({ heightSide, tapeGirth }) => {
    if (!(heightSide > highest)) return [];
    highest = heightSide;
    return [{ level: heightSide, girth: tapeGirth }];
  });
}

function sharedTop(a: readonly LinePoint[], b: readonly LinePoint[]): number {
  return Math.min(a.at(-1)?.level ?? 0, b.at(-1)?.level ?? 0);
}

function nearest(
  places: readonly PlaceDifference[],
  distance: (place: PlaceDifference) => number,
): PlaceDifference | undefined {
  let found: PlaceDifference | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (const place of places) {
    const away = distance(place);
    if (away < least) [found, least] = [place, away];
  }
  return found;
}
