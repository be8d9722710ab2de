import type { Handle } from '../../plan/schema.ts';

/** The bar that builds the basket up row by row. */
export const buildUpWords = {
  play: 'Play',
  pause: 'Pause',
  lastRow: 'Row woven last',
  row: (row: number, rows: number) => `Row ${row} of ${rows}`,
  /** After the last row. */
  finished: {
    none: 'The rim is on: the basket is finished.',
    swing: 'Rim and handle are on: the basket is finished.',
    fixed: 'Handle and rim are on: the basket is finished.',
  } satisfies Record<Handle['kind'], string>,
  progress: 'Rows settled',
  settled: (ready: number, rows: number) => `${ready} of ${rows} settled`,
  cancel: 'Cancel',
  stopped: (ready: number) => (ready === 0 ? 'Stopped' : `Stopped: rows 1 to ${ready} are here`),
  settleRest: 'Settle the rest',
  done: 'Done',
  tapeGirth: (girth: string) => `Tape girth ${girth}.`,
  failed: (why: string) => `The rows could not all be settled (${why}).`,
};
