/** What the maker does at a row of the build-up. */
export const stepWords = {
  /** `weave` as in `weaveWords.inSentence`, `strand` as `strand` gives it. */
  begin: (weave: string, strand: string) => `Begin with ${weave}: ${strand}.`,
  goOn: (weave: string, strand: string) => `Go on with ${weave}: ${strand}.`,
  /** `section` as in `strandNameWords`. */
  strand: (colour: string, section: string, width: string) => `${colour} ${section} ${width}`,
  splice: (stakes: number) => `The weaver runs out: splice a new one over ${stakes} stakes.`,
  shortWeaver: (next: number) => `A short one will do: row ${next} takes another.`,
  row: (row: number, all: number) =>
    row === all ? `Row ${row}: the last one.` : `Row ${row} of ${all}.`,

  /** `place` as in `oddEndPlaceWords.at`. */
  split: (place: string) => `Split the stake ${place}.`,
  added: (place: string) => `Add one end ${place}.`,

  sidesUp: {
    creased: 'Crease the stakes over the edge: the sides come up.',
    rolled: 'The sides come up, the stakes bending over the first rows.',
  },
  pin: (rows: number) => `Pin the two stakes of each corner together, for ${rows} rows.`,
  unpin: 'Take the pins off the corners.',
  fan: (rows: number) => `Weave flat round the base, for ${rows} rows; let the corners fan.`,
};
