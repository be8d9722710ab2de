/** Two compared plans as a table for a spreadsheet: its headings, and what each line is part of. */
export const compareCsvWords = {
  part: 'part',
  figure: 'figure',
  unit: 'unit',
  a: (plan: string) => `A: ${plan}`,
  b: (plan: string) => `B: ${plan}`,
  difference: 'difference (B less A)',
  differencePerGap: 'difference per stake gap',
  summary: 'summary',
  girthAtHeight: 'tape girth at height',
  girthOfRow: 'tape girth of row',
  girthsTogether: 'tape girths together',
};
