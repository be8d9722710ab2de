import type { OddEnd, Strand } from '../../plan/schema.ts';

/** What the maker does at a row of the build-up. */
export const stepWords = {
  /** `weave` as in `weaveWords`, `strand` as `strand` gives it. */
  begin: (weave: string, strand: string) => `Begin with ${weave}: ${strand}.`,
  goOn: (weave: string, strand: string) => `Go on with ${weave}: ${strand}.`,
  strand: (colour: string, section: string, width: string) => `${colour} ${section} ${width}`,
  sections: {
    flat: 'flat',
    'flat-oval': 'flat-oval',
    'half-round': 'half-round',
    round: 'round',
  } satisfies Record<Strand['section'], string>,
  splice: (stakes: number) => `The weaver runs out: splice a new one over ${stakes} stakes.`,
  row: (row: number, all: number) =>
    row === all ? `Row ${row}: the last one.` : `Row ${row} of ${all}.`,

  split: {
    'middle of a long side': 'Split the stake at the middle of a long side.',
    'middle of a short side': 'Split the stake at the middle of a short side.',
    corner: 'Split the stake at the corner.',
  } satisfies Record<OddEnd['at'], string>,
  added: {
    'middle of a long side': 'Add one end at the middle of a long side.',
    'middle of a short side': 'Add one end at the middle of a short side.',
    corner: 'Add one end at the corner.',
  } satisfies Record<OddEnd['at'], string>,

  sidesUp: {
    creased: 'Crease the stakes over the edge: the sides come up.',
    rolled: 'The sides come up, the stakes bending over the first rows.',
  },
  pin: (rows: number) => `Pin the two stakes of each corner together, for ${rows} rows.`,
  unpin: 'Take the pins off the corners.',
  fan: (rows: number) => `Weave flat round the base, for ${rows} rows; let the corners fan.`,
};
