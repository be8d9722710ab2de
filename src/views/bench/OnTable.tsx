import { useMemo } from 'react';
import { benchWords } from '#words/bench.ts';
import { BenchChart } from '../../charts/bench/BenchChart.tsx';
import { OutlineDrawing } from '../../charts/OutlineDrawing.tsx';
import { flatFinish } from '../../mesh/flatFinish.ts';
import { outline } from '../../mesh/outline.ts';
import type { Unit } from '../../plan/schema.ts';
import { formatLength } from '../../plan/units.ts';
import { AcrossRows } from './AcrossRows.tsx';
import type { BenchWork } from './benchWork.ts';
import { plannedTape, replannedTape } from './benchWork.ts';
import { standing } from './standing.ts';

const words = benchWords.table;

/** The basket on the table beside its plan: both girth lines, how far belly and rim have moved, its outline. */
export function OnTable({ work }: { readonly work: BenchWork }) {
  const { course, rows, record, plan, table, planBasket, problem } = work;
  const { unit } = plan.display;
  const [planned, woven] = useMemo(() => {
    const all = Array.from({ length: rows }, (_, index) => index + 1);
    return [all.map((row) => plannedTape(work, row)), all.map((row) => replannedTape(work, row))];
  }, [work, rows]);
  const drawing = useMemo(
    () => table && { outline: outline(table, 'side'), finish: flatFinish(table, 'side') },
    [table],
  );
  const isMeasured = Object.keys(record.girths).length > 0;
  return (
    <section className="bench-card" aria-labelledby="on-table-title">
      <h2 id="on-table-title">{words.title}</h2>
      {problem && <p className="replan-missed">{problem}</p>}
      <BenchChart
        planned={planned}
        woven={woven}
        done={course.replan.from}
        measured={Object.entries(record.girths).map(([row, girth]) => ({
          row: Number(row),
          girth,
        }))}
        row={record.row}
        unit={unit}
      />
      {hasUnmeasured(work) && (
        <p className="soft unmeasured">{isMeasured ? words.someMeasured : words.noneMeasured}</p>
      )}
      {table && (
        <dl className="bench-facts">
          <Fact
            unit={unit}
            name={words.belly(table.summary.belly.row)}
            now={table.summary.belly.tapeGirth}
            plan={planBasket.summary.belly.tapeGirth}
            moved={table.summary.belly.row - planBasket.summary.belly.row}
          />
          <Fact
            unit={unit}
            name={words.rim}
            now={table.summary.rim.tapeGirth}
            plan={planBasket.summary.rim.tapeGirth}
          />
          <Fact
            unit={unit}
            name={words.height}
            now={table.summary.height}
            plan={planBasket.summary.height}
          />
        </dl>
      )}
      <AcrossRows work={work} />
      {drawing && (
        <OutlineDrawing
          title={words.outline}
          {...drawing}
          row={Math.min(rows, record.row)}
          unit={unit}
        />
      )}
    </section>
  );
}

/** Whether a row is woven that nobody measured. */
function hasUnmeasured({ course, record }: BenchWork): boolean {
  return Array.from({ length: course.replan.from }, (_, index) => index + 1).some(
    (row) => record.girths[row] === undefined,
  );
}

interface FactProps {
  readonly name: string;
  /** On the table and in the plan, mm. */
  readonly now: number;
  readonly plan: number;
  /** Rows it has moved up. */
  readonly moved?: number;
  readonly unit: Unit;
}

function Fact({ name, now, plan, moved = 0, unit }: FactProps) {
  return (
    <div>
      <dt>{name}</dt>
      <dd>
        {formatLength(now, unit)}
        <small>{standing({ now, plan, moved, unit })}</small>
      </dd>
    </div>
  );
}
