import { useMemo } from 'react';
import { girthLineWords } from '#words/girthLine.ts';
import type { Basket } from '../model/basket.ts';
import type { Plan } from '../plan/schema.ts';
import { chartFrame } from './chartFrame.ts';
import { GirthDrawing } from './GirthDrawing.tsx';
import { GirthHead } from './GirthHead.tsx';
import { GirthReadout } from './GirthReadout.tsx';
import { handlesOf } from './handles.ts';
import { PointEditor } from './PointEditor.tsx';
import { stretches } from './stretches.ts';
import { useChartSize } from './useChartSize.ts';
import { useGirthDesk } from './useGirthDesk.ts';
import type { ChangePlan } from './useGirthEdits.ts';
import './charts.css';

export interface GirthLineProps {
  readonly plan: Plan;
  /** Planned girth by row, mm, from `girthLine(plan)`; index 0 is the base. */
  readonly girths: Float64Array;
  readonly basket: Pick<Basket, 'rows'> | null;
  /** Row pointed at, here or elsewhere. */
  readonly row: number | null;
  readonly onRow: (row: number | null) => void;
  readonly onChange: ChangePlan;
}

/** The girth line as a chart: rows go up and girth goes out, like half the basket's outline. */
export function GirthLine({ plan, girths, basket, row, onRow, onChange }: GirthLineProps) {
  const { unit } = plan.display;
  const { points } = plan.girthLine;
  const rows = girths.length - 1;
  const [box, size] = useChartSize({ width: 360, height: 380 });
  const tape = useMemo(
    () => Float64Array.from(basket?.rows.slice(0, rows) ?? [], (read) => read.tapeGirth),
    [basket, rows],
  );
  const handles = useMemo(() => handlesOf(plan.girthLine, rows), [plan.girthLine, rows]);
  const parts = useMemo(() => stretches(girths[0] ?? 0, points, rows), [girths, points, rows]);
  const frame = useMemo(
    () => chartFrame(size.width, size.height, rows, [...girths, ...tape.filter(Number.isFinite)]),
    [size, rows, girths, tape],
  );
  const point = (to: number | null) => {
    if (to !== row) onRow(to);
  };
  const desk = useGirthDesk({ plan, girths, handles, box, onRow: point, onChange });
  return (
    <figure className="girth">
      <GirthHead
        handle={desk.chosen}
        canRemove={desk.chosen?.kind === 'hand' || points.length > 1}
        onAdd={() => desk.addAfter(desk.chosen)}
        onRemove={desk.remove}
      />
      <GirthReadout row={row} planned={girths} tape={tape} unit={unit} />
      <div className="girth-box" ref={box}>
        <GirthDrawing
          size={size}
          frame={frame}
          planned={girths}
          tape={tape}
          stretches={parts}
          handles={handles}
          unit={unit}
          row={row}
          onRow={point}
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
      <p className="girth-hint">{girthLineWords.hint}</p>
    </figure>
  );
}
