/** The chart to weave against: a line a row, from the base up. */
import type { Basket } from '../../../model/basket.ts';
import { formatChange, formatLength } from '../../../plan/units.ts';
import type { Flow } from '../page/flow.ts';
import { inks } from '../page/mark.ts';
import type { Column } from '../page/table.ts';
import { table } from '../page/table.ts';

const columns: readonly Column[] = [
  { title: 'Done', share: 13, align: 'middle', blank: 'tick' },
  { title: 'Row', share: 10, align: 'right', bold: true },
  { title: 'Tape girth', share: 21, align: 'right', bold: true },
  { title: 'Change', share: 18, align: 'right' },
  { title: 'Length × width', share: 33, align: 'right' },
  { title: 'Height', share: 17, align: 'right' },
  { title: 'As woven', share: 24, blank: 'write' },
  { title: 'At this row', share: 56 },
];

const unitWord = { in: 'inches', cm: 'centimetres', mm: 'millimetres' } as const;

/** Draws the chart. Rows are a little lower where that keeps the chart on one page. `words` are the step words by row. */
export function rowChart(flow: Flow, { plan, rows }: Basket, words: ReadonlyMap<number, string>) {
  const { unit } = plan.display;
  const bare = { withUnit: false };
  const length = (mm: number) => formatLength(mm, unit, bare);
  const measured = (row: number) => {
    const girth = plan.measured[row];
    return girth === undefined ? '' : length(girth);
  };
  flow.paragraph(
    `Pull the tape round the outside, level, after packing the row. All lengths in ${unitWord[unit]}. ` +
      'Height is that of the row over the table, at the middle of the sides.',
    { ink: inks.soft, size: 8.5 },
  );
  flow.gap(1.5);
  table(
    flow,
    columns,
    rows.map((row) => [
      '',
      `${row.row}`,
      length(row.tapeGirth),
      row.row === 1 ? '' : formatChange(row.change, unit, bare),
      `${length(row.length)} × ${length(row.width)}`,
      length(row.heightSide),
      measured(row.row),
      [words.get(row.row), acrossText(plan, row.row)].filter(Boolean).join('; '),
    ]),
    {
      rowHeight: rows.length > 30 && rows.length <= 40 ? 5.6 : 6.1,
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
  return `woven ${length(across.length)} × ${length(across.width)}`;
}
