import { stageWords } from '#words/stage.ts';
import type { Basket } from '../../model/basket.ts';
import { formatLength } from '../../plan/units.ts';
import type { ReadingWords } from '../../scene/Readings.tsx';

/** Under this a clearance is not spoken of, mm. */
const least = 1;

/** What stands beside the lines on the stage, in the plan's unit. */
export function readingWords({ plan, rows, summary }: Basket, row: number | null): ReadingWords {
  const text = (mm: number) => formatLength(mm, plan.display.unit);
  const feet = summary.footHeight >= least ? [stageWords.feet(text(summary.footHeight))] : [];
  const clear = text(summary.centreClearance);
  const middle = summary.centreClearance >= least ? [stageWords.middle(clear)] : [];
  const read = row === null ? undefined : rows[row - 1];
  return {
    height: stageWords.wall(text(summary.height)),
    length: text(Math.max(...rows.map(({ length }) => length))),
    width: text(Math.max(...rows.map(({ width }) => width))),
    table: [stageWords.table, ...feet, ...middle].join('\n'),
    hasFeet: feet.length > 0,
    tape: read ? stageWords.tape(read.row, text(read.tapeGirth)) : null,
  };
}
