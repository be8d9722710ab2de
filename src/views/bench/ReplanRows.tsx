import { formatChange, formatLength } from '../../plan/units.ts';
import type { BenchWork } from './benchWork.ts';
import { plannedTape, replannedTape } from './benchWork.ts';

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
          <summary>Rows {from + first} to the rim</summary>
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
          <th scope="col">Row</th>
          <th scope="col">Old plan</th>
          <th scope="col">Replan</th>
          <th scope="col">Apart</th>
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
              <td>{formatChange(next - planned, unit, { withUnit: false })}</td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}
