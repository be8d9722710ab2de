/** Two compared plans on a printed page or in one picture. Lengths are written out, their unit included. */
export const comparePageWords = {
  title: 'Two plans compared',
  fileTitle: (a: string, b: string) => `${a} and ${b}`,
  foot: (a: string, b: string, day: string) => `A ${a} · B ${b} · ${day}`,
  summary: 'Summary',
  difference: 'B less A',
  view: { side: 'Side', end: 'End' },
  /** Under the girth lines. */
  axis: { row: 'tape girth, by row', height: 'tape girth, by height' },
  /** The table of places: rows, or heights over the table. */
  place: { row: 'Row', height: 'Height' },
  perGap: 'per gap',
  heading: {
    row: (unit: string) => `Tape girth by row, ${unit}`,
    height: (unit: string) => `Tape girth by height, ${unit}`,
  },
  mostApart: {
    row: (difference: string, row: string) => `Most apart: ${difference} at row ${row}.`,
    height: (difference: string, height: string) => `Most apart: ${difference} at ${height}.`,
  },
  together: {
    row: (count: number, difference: string) => `${count} rows together: ${difference}`,
    height: (count: number, difference: string) => `${count} heights together: ${difference}`,
  },
  /** Where one place in `every` is printed. */
  togetherOneIn: {
    row: (count: number, difference: string, every: number) =>
      `${count} rows together: ${difference}. One in ${every} is printed`,
    height: (count: number, difference: string, every: number) =>
      `${count} heights together: ${difference}. One in ${every} is printed`,
  },
};
