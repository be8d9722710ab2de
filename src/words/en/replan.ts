/**
 * What is asked about a measure, and said of the rows to come. Lengths come written as `{mm:12.3}`, which the
 * view writes in the plan's unit.
 */
export const replanWords = {
  girth: {
    impossible: (girth: string, least: string, most: string) =>
      `${girth} cannot be: a girth is ${least} to ${most}.`,
    twice: (girth: string, times: string, expected: string, row: number) =>
      `${girth} is ${times} times the ${expected} of row ${row}. Was the tape round once?`,
    tooShort: (girth: string, row: number, least: string) =>
      `${girth} is shorter than the base allows: even pulled in all the way, row ${row} would ` +
      `measure ${least}. Is it the whole way round?`,
    half: (girth: string, times: string, expected: string, row: number) =>
      `${girth} is ${times} times the ${expected} of row ${row}. Half the way?`,
    off: (by: string, isMore: boolean, row: number) =>
      `${by} ${isMore ? 'more' : 'less'} than row ${row} was to have. Measure once more?`,
  },
  height: {
    impossible: (height: string, row: number) => `${height} cannot be the height of row ${row}.`,
    off: (expected: string, row: number, height: string) =>
      `The plan has ${expected} at the top of row ${row}, and packing cannot make ${height} ` +
      'of it. Was it measured from the table, at the middle of a side?',
  },
  across: {
    impossible: (size: string, least: string, most: string) =>
      `${size} cannot be: across a row is ${least} to ${most}.`,
    /** Beyond half of the way round. */
    tooLong: {
      length: (row: number, girth: string, half: string, size: string) =>
        `Row ${row} is ${girth} round, so no way across it is more than half of that, ` +
        `${half}. Is ${size} the length?`,
      width: (row: number, girth: string, half: string, size: string) =>
        `Row ${row} is ${girth} round, so no way across it is more than half of that, ` +
        `${half}. Is ${size} the width?`,
    },
    noSuchLoop: (at: {
      readonly size: string;
      readonly other: string;
      readonly shortest: string;
      readonly longest: string;
      readonly row: number;
      readonly girth: string;
    }) =>
      `${at.size} by ${at.other} is between ${at.shortest} and ${at.longest} round, and row ` +
      `${at.row} is ${at.girth}. Measure once more, outside and level?`,
    off: (by: string, isMore: boolean, expected: string, row: number) =>
      `${by} ${isMore ? 'more' : 'less'} than the ${expected} that row ${row} settles to. ` +
      'Measured outside, at the same row?',
  },
  gapsNarrow: (row: number, gap: string, strand: string) =>
    `At this pull the gaps close below the strand's width at row ${row}: down to ` +
    `${gap} on the mean, and the strand is ${strand} wide. Ease the pull, or shave the ` +
    'stakes before you get there.',
};
