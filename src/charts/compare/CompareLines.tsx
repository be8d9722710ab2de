import { compareChartWords } from '#words/compareCharts.ts';
import { planLetters } from '#words/planLetters.ts';
import type { Unit } from '../../plan/schema.ts';
import { formatChange, shownChange } from '../../plan/units.ts';
import type { ChartFrame } from '../chartFrame.ts';
import { xOf, yOf } from '../chartFrame.ts';

/** A point of a line: how far up, in rows or mm as the frame counts, and its girth, mm. */
export interface LinePoint {
  readonly level: number;
  readonly girth: number;
}

export interface CompareLinesProps {
  readonly frame: ChartFrame;
  readonly a: readonly LinePoint[];
  readonly b: readonly LinePoint[];
  /** The girth line between them, where one is shown. */
  readonly blend: readonly LinePoint[];
  /** What lies between the two is shaded up to this level. */
  readonly sharedTo: number;
}

/** Two girth lines with the area between them shaded, and a third between them. */
export function CompareLines({ frame, a, b, blend, sharedTo }: CompareLinesProps) {
  const shared = (line: readonly LinePoint[]) => line.filter(({ level }) => level <= sharedTo);
  const there = pathOf(frame, shared(a));
  const back = pathOf(frame, shared(b).toReversed());
  return (
    <g>
      {there && back && <path className="compare-area" d={`${there}${back.replace('M', 'L')}Z`} />}
      <path className="compare-line side-blend" d={pathOf(frame, blend)} />
      <path className="compare-line side-a" d={pathOf(frame, a)} />
      <path className="compare-line side-b" d={pathOf(frame, b)} />
      <LineEnd frame={frame} point={a.at(-1)} other={b.at(-1)} side="a" />
      <LineEnd frame={frame} point={b.at(-1)} other={a.at(-1)} side="b" />
    </g>
  );
}

interface LineEndProps {
  readonly frame: ChartFrame;
  readonly point: LinePoint | undefined;
  /** Where the other line ends: the letters go apart. */
  readonly other: LinePoint | undefined;
  readonly side: 'a' | 'b';
}

/** A letter stands clear of the ring round a chosen point, px. */
const aside = { x: 21, y: 5 } as const;

/** The letter beside the upper end of a line. */
function LineEnd({ frame, point, other, side }: LineEndProps) {
  if (!point) return null;
  const apart = point.girth - (other?.girth ?? Number.NaN);
  const isLeft = apart === 0 ? side === 'a' : apart < 0;
  return (
    <text
      className={`compare-end side-${side}`}
      x={xOf(frame, point.girth) + (isLeft ? -aside.x : aside.x)}
      y={yOf(frame, point.level) - aside.y}
      textAnchor="middle"
    >
      {planLetters[side]}
    </text>
  );
}

export interface MostApartProps {
  readonly frame: ChartFrame;
  readonly level: number;
  /** Where each line stands there, mm. */
  readonly a: number;
  readonly b: number;
  readonly unit: Unit;
  /** `row 18` or the height. */
  readonly name: string;
}

/** The place where the two lie farthest apart, with how far: second less first, of the lines as drawn. */
export function MostApart({ frame, level, a, b, unit, name }: MostApartProps) {
  const apart = shownChange(a, b, unit);
  // nor is there anything to tell where no tape shows a difference
  if (!Number.isFinite(apart) || apart === 0) return null;
  const y = yOf(frame, level);
  const [left, right] = [xOf(frame, Math.min(a, b)), xOf(frame, Math.max(a, b))];
  const label = labelPlace(frame, left, right, y);
  return (
    <g className="compare-most">
      <path d={`M${left},${y - 5}v10M${right},${y - 5}v10M${left},${y}H${right}`} />
      <text x={label.x} y={label.y} textAnchor={label.anchor}>
        {formatChange(apart, unit)}
        <tspan x={label.x} dy="1.15em">
          {compareChartWords.mostApartAt(name)}
        </tspan>
      </text>
    </g>
  );
}

/** Room that the two lines of the label take, px. */
const labelWidth = 108;

/** Beside the two ends where there is room for it, and otherwise between them. */
function labelPlace(frame: ChartFrame, left: number, right: number, y: number) {
  // under the top edge, where the letters of the lines and their last points stand
  const beside = Math.max(y - 3, frame.top + 20);
  if (right + 15 + labelWidth < frame.right + 12) {
    return { x: right + 15, y: beside, anchor: 'start' } as const;
  }
  if (left - 15 - labelWidth > frame.left) {
    return { x: left - 15, y: beside, anchor: 'end' } as const;
  }
  const above = y - 24 > frame.top ? y - 20 : y + 18;
  return { x: (left + right) / 2, y: above, anchor: 'middle' } as const;
}

function pathOf(frame: ChartFrame, line: readonly LinePoint[]): string {
  return line
    .filter(({ girth }) => Number.isFinite(girth))
    .map(
      ({ level, girth }, at) =>
        `${at === 0 ? 'M' : 'L'}${xOf(frame, girth).toFixed(1)},${yOf(frame, level).toFixed(1)}`,
    )
    .join('');
}
