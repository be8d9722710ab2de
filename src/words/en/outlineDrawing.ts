/** The drawn side and end of a basket, and what is written at their dimensions. Lengths are written out. */
export const outlineDrawingWords = {
  under: {
    side: (length: string) => `Side · base ${length} long`,
    end: (width: string) => `End · base ${width} wide`,
  },
  wall: (height: string) => `wall ${height}`,
  middleClear: (height: string) => `middle ${height} clear`,
  rim: (across: string) => `rim ${across}`,
  widest: (across: string) => `widest ${across}`,
};
