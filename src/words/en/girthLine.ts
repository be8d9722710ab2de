/** The girth line: its chart, its points and what is done with them. */
export const girthLineWords = {
  title: 'Girth line',
  drawing: 'Girth line: rows go up, girth goes out to the right',
  addPoint: 'Add point',
  removePoint: 'Remove point',
  clearRow: 'Clear row',
  hint: 'Drag a point. Press twice on the line to add one, twice on a point to take it away. Keys: arrows move, A adds, Delete removes.',
  axes: {
    girth: (unit: string) => `girth, ${unit}`,
    row: 'row',
    base: 'base',
  },
  /** How to read the two lines, and the numbers of the row pointed at. */
  readout: {
    planned: 'planned girth',
    tape: 'tape round the outside',
    base: 'Base',
    row: (row: number) => `Row ${row}`,
    change: 'change from the row before',
  },
  handle: {
    point: (row: number) => `Point at row ${row}`,
    hand: (row: number) => `Set by hand at row ${row}`,
    value: (row: number, girth: string) => `row ${row}: girth ${girth}`,
    /** `after` is what `afterIt` gives. */
    valueAndAfter: (row: number, girth: string, after: string) =>
      `row ${row}: girth ${girth}, ${after}`,
    afterIt: (stretch: string) => `${stretch} after it`,
  },
  /** What a weaver does on a stretch of the line, and how much of it. */
  stretch: {
    straight: 'straight',
    letsOut: 'lets out',
    pullsIn: 'pulls in',
    eachRow: (length: string) => `${length} a row`,
    everyRows: (length: string, rows: number) => `${length} every ${rows} rows`,
    phrase: (act: string, amount: string) => `${act} ${amount}`,
  },
  editor: {
    none: 'Choose a point for its numbers.',
    row: 'Row',
    rowByHand: (row: number) => `Row ${row}, by hand`,
    girth: 'Girth',
  },
  /** What can be undone. */
  acts: {
    add: 'adding a point',
    move: 'moving a point',
    remove: 'removing a point',
    setRow: (row: number) => `setting row ${row} by hand`,
    clearRow: (row: number) => `giving row ${row} back to the line`,
  },
};
