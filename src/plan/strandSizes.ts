/** Strands as they are sold, to choose from; any other size can be typed. Lengths mm. */
import { strandSizeWords } from '#words/strandSizes.ts';
import type { Strand } from './schema.ts';
import type { SizeSource } from './sizeSources.ts';
import { memory, pages, practice } from './sizeSources.ts';

export interface StrandSize {
  /** Trade name: a nominal width, or a number. */
  readonly name: string;
  readonly width: number;
  readonly thickness: number;
  /** Where the name is seen in use, where the width in mm comes from, and where the thickness. */
  readonly sources: {
    readonly name: SizeSource;
    readonly width: SizeSource;
    readonly thickness: SizeSource;
  };
}

/** Thickness of a strip of cane of this width. Common practice, no source. */
export function caneThickness(width: number): number {
  return Math.min(1.2, 0.35 * width);
}

const inches = (
  name: string,
  inch: number,
  thickness: number,
  seen: SizeSource = memory,
  thick: SizeSource = memory,
): StrandSize => ({
  name: strandSizeWords.inches(name),
  width: Math.round(inch * 254) / 10,
  thickness,
  sources: { name: seen, width: 'computed', thickness: thick },
});

/** A true half circle is the thickest that half-round stock can be. */
const halfRound = (name: string, inch: number, seen: SizeSource = memory): StrandSize =>
  inches(name, inch, Math.round(inch * 127) / 10, seen, 'computed');

const round = (
  number: string,
  across: number,
  seen: SizeSource = pages[9],
  width: SizeSource = memory,
): StrandSize => ({
  name: strandSizeWords.number(number),
  width: across,
  thickness: across,
  sources: { name: seen, width, thickness: width },
});

const cane = (
  name: string,
  width: number,
  seen: SizeSource,
  source: SizeSource = memory,
): StrandSize => ({
  name,
  width,
  thickness: Math.round(caneThickness(width) * 100) / 100,
  sources: { name: seen, width: source, thickness: practice },
});

const canes = strandSizeWords.cane;

/** Usual sizes by section, from the finest to the widest. */
export const strandSizes: Readonly<Record<Strand['section'] | 'cane', readonly StrandSize[]>> = {
  flat: [
    inches('3/16', 3 / 16, 1.2),
    inches('1/4', 1 / 4, 1.2),
    inches('3/8', 3 / 8, 1.2, pages[16]),
    inches('1/2', 1 / 2, 1.2, pages[1]),
    inches('5/8', 5 / 8, 1.3, pages[16]),
    inches('3/4', 3 / 4, 1.3),
    inches('7/8', 7 / 8, 1.4),
    inches('1', 1, 1.5),
  ],
  'flat-oval': [
    inches('11/64', 11 / 64, 2, pages[12]),
    inches('3/16', 3 / 16, 2, pages[12]),
    inches('1/4', 1 / 4, 2.2, pages[17]),
    inches('3/8', 3 / 8, 2.4),
    inches('1/2', 1 / 2, 2.8, pages[16]),
    inches('5/8', 5 / 8, 2.8, pages[17]),
    inches('3/4', 3 / 4, 2.9),
  ],
  'half-round': [
    halfRound('1/4', 1 / 4),
    halfRound('3/8', 3 / 8, pages[19]),
    halfRound('1/2', 1 / 2, pages[20]),
    halfRound('5/8', 5 / 8),
    halfRound('3/4', 3 / 4),
  ],
  round: [
    round('0', 1.25),
    round('1', 1.5),
    round('2', 1.75),
    round('3', 2.25),
    round('4', 2.75),
    round('5', 3.25, pages[3], pages[3]), // 1/8 in
    round('5½', 3.5, memory),
    round('6', 4.5),
    round('7', 5),
    round('8', 5.5),
    round('9', 6),
    round('10', 6.5),
    round('12', 9.5, pages[3], pages[3]), // 3/8 in
  ],
  cane: [
    cane(canes.carriage, 1.6, pages[22]),
    cane(canes.superfine, 2, pages[22]),
    cane(canes.fineFine, 2.25, pages[22]),
    cane(canes.fine, 2.5, pages[22]),
    cane(canes.narrowMedium, 2.75, pages[22]),
    cane(canes.medium, 3, pages[22]),
    cane(canes.common, 3.5, pages[22], pages[21]),
    cane(canes.binder('4'), 4, pages[26], pages[26]),
    cane(canes.binder('5'), 5, pages[26], pages[26]),
    cane(canes.binder('6'), 6, pages[26], pages[26]),
  ],
};

/** The size that a strand has, or undefined where it has one of its own. */
export function sizeOf({ section, width, thickness }: Strand): StrandSize | undefined {
  return strandSizes[section].find(
    (size) => Math.abs(size.width - width) < 0.06 && Math.abs(size.thickness - thickness) < 0.06,
  );
}
