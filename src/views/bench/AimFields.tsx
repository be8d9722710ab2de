import { benchWords } from '#words/bench.ts';
import { withChange } from '../../keep/benchBook.ts';
import { changeBenchPage } from '../../keep/benchHere.ts';
import type { BenchRecord } from '../../keep/benchRecord.ts';
import { rowsToHeight } from '../../model/replan/height.ts';
import { spareRows } from '../../model/replan/tablePlan.ts';
import { formatChange, formatLength, unitLength } from '../../plan/units.ts';
import type { BenchWork } from './benchWork.ts';
import { plannedTape } from './benchWork.ts';
import { Stepper } from './Stepper.tsx';

const { aims: words, steps, asPlanned } = benchWords;

/** Over how many rows to come back. */
const overs = [3, 5, 8, 12, 16];

/** What the rows to come are to reach: over how many rows, belly, rim, and rows more or fewer. */
export function AimFields({ work }: { readonly work: BenchWork }) {
  const { record, course, rows, plan, planBasket, table } = work;
  const { unit } = plan.display;
  const { from } = course.replan;
  const left = rows - from;
  const aim = (change: Partial<BenchRecord>, label: string) =>
    changeBenchPage((page) => withChange(page, change), label);
  const rim = record.rim ?? plannedTape(work, rows);
  const step = unit === 'in' ? unitLength.in / 8 : 2;
  const addRows = (by: number) => {
    const start = record.added?.from ?? from;
    const { least, most } = spareRows(plan, start);
    const total = Math.min(most, Math.max(least, (record.added?.rows ?? 0) + by));
    aim({ added: total === 0 ? null : { from: start, rows: total }, taken: null }, steps.rowsInAll);
  };
  const missing = table ? rowsToHeight(table, planBasket.summary.height) : 0;
  return (
    <div className="aims">
      <label className="aim-over">
        <span>{words.backOver}</span>
        <select
          value={record.backOver ?? ''}
          onChange={({ target }) =>
            aim({ backOver: Number(target.value) || null }, steps.rowsToTake)
          }
        >
          {overs
            .filter((over) => over < left || over === record.backOver)
            .map((over) => (
              <option key={over} value={over}>
                {words.rows(over)}
              </option>
            ))}
          <option value="">{words.allRows(left)}</option>
        </select>
      </label>
      {course.belly !== null && (
        <label className="aim-belly">
          <input
            type="checkbox"
            checked={record.keepsBelly}
            onChange={({ target }) => aim({ keepsBelly: target.checked }, steps.belly)}
          />
          {words.belly(course.belly)}
        </label>
      )}
      <Stepper
        label={words.rim}
        value={formatLength(rim, unit)}
        aside={
          record.rim === null
            ? asPlanned
            : words.planned(formatLength(plannedTape(work, rows), unit))
        }
        onStep={(by) => {
          const to = Math.round(rim / step + by) * step;
          const isPlan = Math.abs(to - plannedTape(work, rows)) < step / 2;
          aim({ rim: isPlan ? null : to }, steps.rim);
        }}
      />
      <Stepper
        label={words.rowsInAll}
        value={`${rows}`}
        aside={table ? words.high(formatLength(table.summary.height, unit)) : ''}
        onStep={addRows}
      />
      {missing !== 0 && (
        <button type="button" className="aim-height" onClick={() => addRows(missing)}>
          {words.forHeight(
            missing,
            formatChange(missing, 'mm', { withUnit: false }),
            formatLength(planBasket.summary.height, unit),
          )}
        </button>
      )}
    </div>
  );
}
