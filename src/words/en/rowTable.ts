/** The row chart: one line a row, to weave against. */
export const rowTableWords = {
  title: 'Row chart',
  baseFirst: 'Put the base at the top',
  rimFirst: 'Put the rim at the top',
  save: 'Save chart (CSV)',
  caption: (unit: string) => `Row chart, lengths in ${unit}. Arrow keys go from row to row.`,
  headings: {
    row: 'Row',
    tape: 'Tape girth',
    change: 'Change',
    perGap: 'per gap',
    size: 'Length × width',
    height: 'Height',
    lean: 'Lean',
    planned: 'Planned, mid‑wall',
    band: 'Band',
  },
  byHand: 'by hand',
  plannedOf: (row: number) => `Planned girth of row ${row}`,
  clear: 'clear',
  clearRow: (row: number) => `Clear row ${row}: back on the girth line`,
};
