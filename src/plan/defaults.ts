/**
 * What a plan has when its document says nothing. Plain data, in the schema's shape.
 * Where a figure has no source, it is common practice, no source.
 */

/** Inches, as most patterns of the craft are written. */
export const defaultDisplay = { unit: 'in' } as const;

/** No bending in of the weaver at the corners: the wall rounds as it will. */
export const defaultCornerHold = 0;
export const defaultCornerHoldRows = 0;

/** An odd end is a choice, so none is made for the maker. */
export const defaultOddEndPlace = 'middle of a long side';
export const defaultOddEnd = { kind: 'none', at: defaultOddEndPlace } as const;

/**
 * Rows do not pack perfectly: finished heights of published patterns come out a little over the
 * sum of their strands (docs/design-file.md, "Packing").
 */
export const defaultPacking = 1.05;

/** Undyed. */
export const defaultColour = 'natural';

/** Half of a soaked stake's bend stays in it. */
export const defaultSet = { stakes: 0.5 } as const;

/** A pair of half-inch flat-oval hoops, lapped 3 in, with a filler between and 3 mm lashing. */
export const defaultRim = {
  hoop: { section: 'flat-oval', width: 12.7, thickness: 3 },
  lap: 76,
  filler: true,
  lasher: { width: 3 },
} as const;

export const defaultHandle = { kind: 'none' } as const;

/** 2 3/4 in to tuck at each end, a weaver lapped over four stakes, a tenth lost to waste. */
export const defaultAllowances = {
  tuck: 70,
  splice: 4,
  taper: 250,
  waste: 0.1,
  usableStrand: 2400,
} as const;
