import { benchWords } from '#words/bench.ts';
import { unitWords } from '#words/units.ts';
import { formatChange, formatLength } from '../../plan/units.ts';
import type { BenchWork } from './benchWork.ts';
import { changeOf, targetTape } from './benchWork.ts';

/** How many rows ahead are told. */
const ahead = 4;

/** The rows after the present one, small. */
export function NextRows({ work }: { readonly work: BenchWork }) {
  const { unit } = work.plan.display;
  const first = work.record.row + 1;
  const count = Math.max(0, Math.min(ahead, work.rows - first + 1));
  if (count === 0) return null;
  return (
    <section className="next-rows" aria-label={benchWords.now.nextRows(unitWords.length[unit])}>
      <ol>
        {Array.from({ length: count }, (_, index) => first + index).map((row) => (
          <li key={row}>
            <span className="next-row-name">{benchWords.row(row)}</span>
            <strong>{formatLength(targetTape(work, row), unit, { withUnit: false })}</strong>
            <span>{formatChange(changeOf(work, row), unit, { withUnit: false })}</span>
          </li>
        ))}
      </ol>
    </section>
  );
}
