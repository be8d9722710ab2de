import { useMemo } from 'react';
import type { Differences } from '../../model/compare/differences.ts';
import type { Plan } from '../../plan/schema.ts';
import { chartFrame } from '../chartFrame.ts';
import { GirthHead } from '../GirthHead.tsx';
import { handlesOf } from '../handles.ts';
import { PointEditor } from '../PointEditor.tsx';
import { useChartSize } from '../useChartSize.ts';
import { useGirthDesk } from '../useGirthDesk.ts';
import type { ChangePlan } from '../useGirthEdits.ts';
import { CompareDrawing } from './CompareDrawing.tsx';
import { CompareReadout } from './CompareReadout.tsx';
import '../charts.css';
import './compare.css';

export interface CompareGirthLineProps {
  /** Planned girth by row, mm, of each plan and of the blend; index 0 is the base. */
  readonly girths: Readonly<Record<'a' | 'b', Float64Array>>;
  readonly blend: Float64Array | null;
  /** Which plan's points can be dragged, and that plan. */
  readonly edited: 'a' | 'b';
  readonly plan: Plan;
  /** By row; null until both have settled. */
  readonly differences: Differences | null;
  readonly row: number | null;
  readonly onRow: (row: number | null) => void;
  readonly onChange: ChangePlan;
}

/** Both girth lines by row; the points of the edited one can be dragged. */
export function CompareGirthLine(props: CompareGirthLineProps) {
  const { girths, blend, edited, plan, differences, row, onRow, onChange } = props;
  const { unit } = plan.display;
  const own = girths[edited];
  const rows = own.length - 1;
  const [box, size] = useChartSize({ width: 360, height: 380 });
  const handles = useMemo(() => handlesOf(plan.girthLine, rows), [plan.girthLine, rows]);
  const frame = useMemo(() => {
    const most = Math.max(girths.a.length, girths.b.length) - 1;
    return chartFrame(size.width, size.height, most, [...girths.a, ...girths.b]);
  }, [size, girths]);
  const desk = useGirthDesk({ plan, girths: own, handles, box, onRow, onChange });
  const place = differences?.places.find((one) => one.place === row) ?? null;
  return (
    <figure className={`girth compare-girth edits-${edited}`}>
      <GirthHead
        handle={desk.chosen}
        canRemove={desk.chosen?.kind === 'hand' || plan.girthLine.points.length > 1}
        onAdd={() => desk.addAfter(desk.chosen)}
        onRemove={desk.remove}
      />
      <CompareReadout place={place} hasBlend={blend !== null} lines="planned" unit={unit} />
      <div className="girth-box" ref={box}>
        <CompareDrawing
          size={size}
          frame={frame}
          girths={girths}
          blend={blend}
          edited={edited}
          handles={handles}
          unit={unit}
          row={row}
          onRow={onRow}
          desk={desk}
        />
      </div>
      <PointEditor
        handle={desk.chosen}
        unit={unit}
        onMove={(handle, to, girth, stepped) =>
          stepped ? desk.step(handle, to, girth) : desk.move(handle, to, girth)
        }
      />
    </figure>
  );
}
