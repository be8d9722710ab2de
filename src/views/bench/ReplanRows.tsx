import { benchWords } from '#words/bench.ts';
import { formatChange, formatLength, shownChange } from '../../plan/units.ts';
import type { BenchWork } from './benchWork.ts';
import { plannedTape, replannedTape } from './benchWork.ts';

const words = benchWords.replan;

/** Rows told before the rest is unfolded. */
const first = 4;

/** The rows to come: old plan, replan, and how far they are apart. */
export function ReplanRows({ work }: { readonly work: BenchWork }) {
  const { rows, course } = work;
  const from = course.replan.from + 1;
  const all = Array.from({ length: rows - from + 1 }, (_, index) => from + index);
  return (
    <>
      <RowList work={work} rows={all.slice(0, first)} />
      {all.length > first && (
        <details className="replan-more">
          <summary>{words.restOfRows(from + first)}</summary>
          <RowList work={work} rows={all.slice(first)} />
        </details>
      )}
    </>
  );
}

function RowList({ work, rows }: { readonly work: BenchWork; readonly rows: readonly number[] }) {
  const { unit } = work.plan.display;
  return (
    <table className="replan-rows">
      <thead>
        <tr>
          <th scope="col">{benchWords.rowColumn}</th>
          <th scope="col">{words.columns.planned}</th>
          <th scope="col">{words.columns.replanned}</th>
          <th scope="col">{words.columns.apart}</th>
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => {
          const planned = plannedTape(work, row);
          const next = replannedTape(work, row);
          return (
            <tr key={row}>
              <th scope="row">{row}</th>
              <td>{formatLength(planned, unit, { withUnit: false })}</td>
              <td>
                <strong>{formatLength(next, unit, { withUnit: false })}</strong>
              </td>
              <td>{formatChange(shownChange(planned, next, unit), unit, { withUnit: false })}</td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}
