import { benchWords } from '#words/bench.ts';
import { withChange } from '../../keep/benchBook.ts';
import { changeBenchPage } from '../../keep/benchHere.ts';
import type { BenchWork } from './benchWork.ts';

const { buttons: words, steps } = benchWords;

interface Props {
  readonly work: BenchWork;
  readonly onMeasure: () => void;
}

/** Back one, measure, row done: large enough for a wet thumb, always at the bottom of the screen. */
export function RowButtons({ work, onMeasure }: Props) {
  const { row } = work.record;
  const go = (to: number, label: string) =>
    changeBenchPage((page) => withChange(page, { row: to }), label);
  return (
    <div className="row-buttons">
      <button
        type="button"
        disabled={row <= 1}
        onClick={() => go(Math.min(row, work.rows + 1) - 1, steps.back)}
      >
        {words.back}
      </button>
      <button type="button" onClick={onMeasure}>
        {words.measured}
      </button>
      <button
        type="button"
        className="main-button"
        disabled={row > work.rows}
        onClick={() => go(row + 1, steps.done(row))}
      >
        {words.done}
      </button>
    </div>
  );
}
