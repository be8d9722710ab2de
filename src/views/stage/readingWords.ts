import type { Basket } from '../../model/basket.ts';
import { formatLength } from '../../plan/units.ts';
import type { ReadingWords } from '../../scene/Readings.tsx';

/** What stands beside the lines on the stage, in the plan's unit. */
export function readingWords({ plan, rows, summary }: Basket, row: number | null): ReadingWords {
  const text = (mm: number) => formatLength(mm, plan.display.unit);
  const read = row === null ? undefined : rows[row - 1];
  return {
    height: text(summary.height),
    length: text(Math.max(...rows.map(({ length }) => length))),
    width: text(Math.max(...rows.map(({ width }) => width))),
    clearance: summary.centreClearance >= 1 ? `${text(summary.centreClearance)} clear` : null,
    tape: read ? `Row ${read.row}: tape ${text(read.tapeGirth)}` : null,
  };
}
