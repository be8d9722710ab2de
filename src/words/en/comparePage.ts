/** Two compared plans on a printed page or in one picture. Lengths are written out, their unit included. */
export const comparePageWords = {
  title: 'Two plans compared',
  fileTitle: (a: string, b: string) => `${a} and ${b}`,
  foot: (a: string, b: string, day: string) => `A ${a} · B ${b} · ${day}`,
  summary: 'Summary',
  difference: 'B less A',
  outlines: 'Outlines of base and wall, all at one scale',
  /** What is seen in the outlines. */
  view: { side: 'From the side', end: 'From the end' },
  /** Under an outline, one line a plan: its base and rim as seen there. */
  sizes: (letter: string, base: string, rim: string, wall: string) =>
    `${letter}: base ${base}, rim ${rim}, wall ${wall} high`,
  girthLines: 'Girth lines',
  /** Beside the girth lines. */
  axis: {
    girth: (unit: string) => `tape girth, ${unit}`,
    row: () => 'row',
    height: (unit: string) => `height over the table, ${unit}`,
  },
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
