/** The row chart of the sheet and the girth line under it. Lengths are written out. */
export const sheetChartWords = {
  heading: 'Row chart',
  note: (unit: string) =>
    `Pull the tape round the outside, level, after packing the row. All lengths in ${unit}. ` +
    'Height is that of the row over the table, at the middle of the sides.',
  columns: {
    done: 'Done',
    row: 'Row',
    girth: 'Tape girth',
    change: 'Change',
    size: 'Length × width',
    height: 'Height',
    asWoven: 'As woven',
    steps: 'At this row',
  },
  /** What was measured across a row. */
  woven: (length: string, width: string) => `woven ${length} × ${width}`,
  line: {
    heading: 'Girth line',
    girth: (unit: string) => `tape girth, ${unit}`,
    row: 'row',
    first: (row: number, girth: string) => `row ${row}: ${girth}`,
    since: (row: number, girth: string, change: string, before: number) =>
      `row ${row}: ${girth} (${change} from row ${before})`,
  },
};
