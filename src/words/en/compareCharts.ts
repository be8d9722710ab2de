/** Charts and tables of two plans side by side; the first is A, the second B, a line between them C. */
export const compareChartWords = {
  drawing: 'Two girth lines: rows go up, girth goes out to the right',
  row: (row: number) => `row ${row}`,
  /** The place where the two lie farthest apart: a row, or a height. */
  mostApartAt: (place: string) => `most apart, ${place}`,
  bLessA: 'B less A',
  readout: {
    lines: { planned: 'planned girth', tape: 'tape girth' },
    blend: 'blend',
    tape: 'tape',
    ofPlan: (letter: string, girth: string) => `${letter} ${girth}`,
    row: (row: number) => `Row ${row}`,
    height: (height: string) => `At ${height}`,
  },
  blend: {
    label: 'A line between the two',
    percent: (share: number) => `${share} %`,
    comesToAtBase: (widest: string, rim: string) => `widest ${widest} at the base, rim ${rim}`,
    comesToAtRow: (widest: string, row: number, rim: string) =>
      `widest ${widest} at row ${row}, rim ${rim}`,
    value: (share: number, comesTo: string) => `${share} % of the way from A to B: ${comesTo}`,
    planned: (comesTo: string) => `Planned girth: ${comesTo}`,
  },
  byHeight: {
    title: 'Girth by height',
    drawing: 'Tape girth of both baskets by height over the table',
    hint: 'Compare by row to drag the points of a girth line.',
    girthAxis: (unit: string) => `tape girth, ${unit}`,
    heightAxis: (unit: string) => `height, ${unit}`,
  },
  table: {
    titles: { row: 'Tape girth, row by row', height: 'Tape girth, by height' },
    note: 'B less A, of the figures as they stand here: + where B is larger. The saved table (CSV) has them unrounded.',
    caption: (unit: string) =>
      `Differences of tape girth in ${unit}, the second plan less the first. Arrow keys go from line to line.`,
    places: { row: 'Row', height: 'Height' },
    rowOfA: 'Row of A',
    rowOfB: 'Row of B',
    difference: 'Difference',
    perGap: 'per stake gap',
    rowsTogether: (rows: number) => `${rows} rows together`,
    meanOf: (places: number) => `Mean of ${places}`,
    mostApart: 'most apart',
  },
};
