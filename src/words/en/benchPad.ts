/** What is said on the measuring pad of the bench. Lengths come written. */
export const benchPadWords = {
  title: 'Measured',
  tabs: { girth: 'Girth', length: 'Length', width: 'Width', height: 'Height' },
  below: 'The row below',
  above: 'The row above',
  value: {
    girth: (row: number) => `Tape girth of row ${row}`,
    length: (row: number) => `Length outside of row ${row}`,
    width: (row: number) => `Width outside of row ${row}`,
    height: (row: number) => `Height so far, at the top of row ${row}`,
  },
  hints: {
    height: 'from the table to its top, mid-side',
    girth: (target: string) => `woven to ${target}`,
    across: (expected: string) => `outside, level; its shape has ${expected}`,
  },
  forget: 'Forget it',
  leave: 'Not now',
  keep: 'Keep',
  keepAllTheSame: 'It is right: keep it',

  keys: {
    eighths: 'Eighths of an inch',
    sixteenth: 'A sixteenth more',
    point: 'Decimal point',
    back: 'Take the last figure back',
  },

  /** What can be undone, as it is named behind “Undo”. */
  steps: {
    girth: (row: number) => `girth of row ${row} as woven`,
    length: (row: number) => `length of row ${row} as woven`,
    width: (row: number) => `width of row ${row} as woven`,
    height: (row: number) => `height of row ${row} as woven`,
    forgotten: (row: number) => `row ${row} not measured`,
  },
};
