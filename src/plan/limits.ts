/**
 * How large a plan may be. Wide enough for any basket a person can carry, narrow enough that a
 * slip of the keyboard is caught and that no document can ask for an endless computation.
 */
export const limits = {
  /** Letters in the name of a plan, or of a version of it. */
  name: { least: 1, most: 120 },
  /** Stakes of a mat, each way. */
  stakes: { least: 2, most: 60 },
  /** Short strands that fill the gaps of a mat, each way. */
  fillers: { least: 0, most: 120 },
  /** Spokes of a wheel. */
  spokes: { least: 2, most: 60 },
  /** Width across a wheel or a board, mm. */
  diameter: { least: 5, most: 2000 },
  /** Width woven flat round the mat of an oval base, mm; ends laid in at each of its corners. */
  border: { least: 5, most: 300 },
  fanned: { least: 0, most: 6 },
  /** Ends that a board carries, and its thickness, mm. */
  boardEnds: { least: 4 },
  boardThickness: { least: 1, most: 60 },
  /** Ends round the wall. */
  ends: { most: 200 },
  /** Rows of the whole wall. */
  rows: { least: 1, most: 300 },
  /** Bands, and points of the girth line. */
  bands: { least: 1, most: 100 },
  points: { least: 1, most: 100 },
  /** Width of a strand, mm. */
  width: { least: 0.5, most: 60 },
  /** Thickness of a strand, mm. */
  thickness: { least: 0.2, most: 30 },
  /** Girth of a row, or of the base, mm. */
  girth: { least: 20, most: 10_000 },
  /** Length or width of a row as measured: half a girth at most. */
  across: { least: 5, most: 5_000 },
  /** Gap between two stakes of the base, mm. */
  gap: { least: 0, most: 200 },
  /** How far the middle of the base is pushed in, mm; and as a share of the base's shorter side. */
  centreLift: { least: 0, most: 200, mostShare: 0.5 },
  packing: { least: 0.8, most: 1.6 },
  cornerHold: { least: 0, most: 1 },
  stakeSet: { least: 0, most: 0.95 },
} as const;
