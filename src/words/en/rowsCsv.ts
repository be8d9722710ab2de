import type { Unit } from '../../plan/schema.ts';

/** Headings of the row chart as a table for a spreadsheet; `unit` as in `unitWords.length`. */
export const rowsCsvWords = {
  row: 'row (number)',
  band: 'band (number)',
  weaver: (unit: string) => `weaver (width x thickness, ${unit})`,
  tapeGirth: (unit: string) => `tape girth (${unit})`,
  /** As a tape is read. */
  weaveTo: {
    in: 'tape girth to weave to (in, to the nearest 1/16)',
    cm: 'tape girth to weave to (cm, to the nearest 0.1)',
    mm: 'tape girth to weave to (mm, to the nearest 0.1)',
  } satisfies Record<Unit, string>,
  change: (unit: string) => `change from the row before (${unit})`,
  changePerGap: (unit: string) => `change per stake gap (${unit})`,
  length: (unit: string) => `length (${unit})`,
  width: (unit: string) => `width (${unit})`,
  heightSide: (unit: string) => `height at the sides (${unit})`,
  heightCorner: (unit: string) => `height at the corners (${unit})`,
  lean: 'lean outward (degrees)',
  gapLeast: (unit: string) => `least gap between stakes (${unit})`,
  gapMost: (unit: string) => `most gap between stakes (${unit})`,
  wall: (unit: string) => `wall so far (${unit})`,
  plannedGirth: (unit: string) => `planned girth in the middle of the wall (${unit})`,
  reachedGirth: (unit: string) => `reached girth in the middle of the wall (${unit})`,
};
