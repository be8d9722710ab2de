/** The chart to weave against: a line a row, from the base up. */
import { listWords } from '#words/lists.ts';
import { sheetChartWords as w } from '#words/sheetChart.ts';
import { unitWords } from '#words/units.ts';
import type { Basket } from '../../../model/basket.ts';
import { formatChange, formatLength, shownChange } from '../../../plan/units.ts';
import type { Flow } from '../page/flow.ts';
import { inks } from '../page/mark.ts';
import type { Column } from '../page/table.ts';
import { table } from '../page/table.ts';

const columns: readonly Column[] = [
  { title: w.columns.done, share: 13, align: 'middle', blank: 'tick' },
  { title: w.columns.row, share: 10, align: 'right', bold: true },
  { title: w.columns.girth, share: 21, align: 'right', bold: true },
  { title: w.columns.change, share: 18, align: 'right' },
  { title: w.columns.size, share: 33, align: 'right' },
  { title: w.columns.height, share: 17, align: 'right' },
  { title: w.columns.asWoven, share: 24, blank: 'write' },
  { title: w.columns.steps, share: 56 },
];

/** Draws the chart with rows at least `rowHeight` mm high. `words` are the step words by row. */
export function rowChart(
  flow: Flow,
  { plan, rows }: Basket,
  words: ReadonlyMap<number, string>,
  rowHeight: number,
): void {
  const { unit } = plan.display;
  const bare = { withUnit: false };
  const length = (mm: number) => formatLength(mm, unit, bare);
  const change = (before: number, girth: number) =>
    formatChange(shownChange(before, girth, unit), unit, bare);
  const measured = (row: number) => {
    const girth = plan.measured[row];
    return girth === undefined ? '' : length(girth);
  };
  table(
    flow,
    columns,
    rows.map((row, index) => [
      '',
      `${row.row}`,
      length(row.tapeGirth),
      index === 0 ? '' : change(rows[index - 1]?.tapeGirth ?? Number.NaN, row.tapeGirth),
      `${length(row.length)} × ${length(row.width)}`,
      length(row.heightSide),
      measured(row.row),
      listWords.steps([words.get(row.row) ?? '', acrossText(plan, row.row)].filter(Boolean)),
    ]),
    {
      rowHeight,
      over: { heading: w.heading, note: w.note(unitWords.names[unit]) },
      size: 8.5,
      ground: (row) => (row % 2 === 1 ? inks.band : null),
    },
  );
}

/** What was measured across a row, such as `woven 9 1/2 × 8 1/4`; nothing where nothing was. */
function acrossText({ measuredAcross, display }: Basket['plan'], row: number): string {
  const across = measuredAcross?.[row];
  if (!across) return '';
  const length = (mm: number | undefined) =>
    mm === undefined ? '?' : formatLength(mm, display.unit, { withUnit: false });
  return w.woven(length(across.length), length(across.width));
}
