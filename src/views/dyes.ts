import { strandColour } from '../mesh/palette.ts';

/** Dyes that are offered, undyed first. */
const offered = [
  'natural',
  'bleached',
  'honey',
  'smoked',
  'walnut',
  'black',
  'madder',
  'rust',
  'weld',
  'moss',
  'indigo',
  'plum',
] as const;

/** CSS colour of each dye by its name, as the stage shows it. */
export const dyes: Readonly<Record<string, string>> = Object.fromEntries(
  offered.map((name) => [name, `rgb(${strandColour(name).join(' ')})`]),
);
