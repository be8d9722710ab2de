import type { Corners } from '../../plan/schema.ts';

/** How a row shares its girth among the ends. Lengths mm. */
export interface RowSpacing {
  readonly spacing: Float64Array;
  readonly grip: Float64Array;
  readonly cornerLength: number;
}

/** What the base gives the rows above it. */
export interface BaseSpacing {
  /** Straight distance from each end to the next on the flat base. */
  readonly chord: Float64Array;
  /** True for the segment that goes round a corner. */
  readonly corner: readonly boolean[];
  /** The segment between the two ends of one place (a split or added stake); −1 where there is none. */
  readonly pair: number;
  readonly girth: number;
  /** Outline girth less the smooth loop through the stakes' middles: what sharp corners add. */
  readonly cornerLength: number;
  /** Wall height over which the spacing evens out (e-fold), mm. */
  readonly evening: number;
}

/** Grip of pinned corner stakes on each other, in terms of the other spacings'. */
const pinGrip = 40;

/**
 * The spacing of one row. Close to the base it is the base's own; it evens out exponentially as the
 * wall rises, starting at the base (square), above the pins (pinned) or above the flat rows (fanned).
 * Pinned corners keep their distance whatever the girth; fanned ones take in all that the row gains.
 * A row that is bent round its corners keeps that share of the base's spacing however high it is.
 *
 * `row` counts from 1, `wall` is the wall height of the row's middle, `free` that of the last row
 * for which the corners are held.
 */
export function rowSpacing(
  base: BaseSpacing,
  corners: Corners,
  row: number,
  girth: number,
  wall: number,
  free: number,
): RowSpacing {
  const ends = base.chord.length;
  const sharp = Math.max(
    cornerShare(corners, row),
    Math.exp(-Math.max(0, wall - free) / base.evening),
  );
  const cornerLength = sharp * base.cornerLength;
  const budget = girth - cornerLength;
  const held = row <= corners.rows;
  let inCorners = 0;
  let whole = 0;
  for (let j = 0; j < ends; j++) {
    whole += base.chord[j]!;
    if (base.corner[j]) inCorners += base.chord[j]!;
  }
  const gained = corners.kind === 'fanned' ? Math.max(0, budget - whole) : 0;
  const sideScale = Math.max(0.05, (budget - inCorners - gained) / (whole - inCorners));
  const pinned = corners.kind === 'pinned' && held;
  const spacing = new Float64Array(ends);
  const grip = new Float64Array(ends).fill(1);
  for (let j = 0; j < ends; j++) {
    const chord = base.chord[j]!;
    const own = base.corner[j] ? chord + gained / 4 : chord * sideScale;
    spacing[j] = sharp * own + ((1 - sharp) * budget) / ends;
    if (base.corner[j] && pinned) grip[j] = pinGrip;
  }
  partPair(spacing, base.pair, wall);
  return { spacing, grip, cornerLength };
}

/** Share of each corner of the base that is bent into the weaver of a row (from 1): 0 … 1, falling with the rows. */
export function cornerShare({ hold, holdRows }: Corners, row: number): number {
  if (holdRows === 1) return row === 1 ? hold : 0;
  return holdRows > 1 ? hold * Math.max(0, 1 - (row - 1) / (holdRows - 1)) : 0;
}

/** Both ends of a pair start from one place: they part only as the wall rises, their neighbours take up the rest. */
function partPair(spacing: Float64Array, pair: number, wall: number): void {
  if (pair < 0) return;
  const ends = spacing.length;
  const spare = Math.max(0, (spacing[pair] ?? 0) - wall);
  for (const [segment, share] of [
    [pair, -1],
    [(pair + ends - 1) % ends, 0.5],
    [(pair + 1) % ends, 0.5],
  ] as const) {
    spacing[segment] = (spacing[segment] ?? 0) + share * spare;
  }
}
