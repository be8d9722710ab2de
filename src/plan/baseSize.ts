/** The woven base in its outline: what its stakes, gaps and borders add up to. Lengths mm. */
import type { Base, Corners, MatBase, OvalBase } from './schema.ts';

/** Gaps between neighbouring lengthwise stakes, and between neighbouring crosswise ones. */
export function baseGaps(base: MatBase | OvalBase): {
  readonly lengthwise: number;
  readonly crosswise: number;
} {
  if (base.kind === 'mat' && base.gaps) return base.gaps;
  return { lengthwise: base.gap ?? 0, crosswise: base.gap ?? 0 };
}

/**
 * Length and width of the mat alone. The crosswise stakes, side by side, make its length; the
 * lengthwise stakes make its width: `n` stakes and `n − 1` gaps each.
 */
export function matSize(base: MatBase | OvalBase): {
  readonly length: number;
  readonly width: number;
} {
  const gaps = baseGaps(base);
  return {
    length: base.crosswise * base.stake.width + (base.crosswise - 1) * gaps.crosswise,
    width: base.lengthwise * base.stake.width + (base.lengthwise - 1) * gaps.lengthwise,
  };
}

/** Length and width of the whole base. */
export function baseSize(base: Base): { readonly length: number; readonly width: number } {
  if (base.kind === 'wheel') return { length: base.diameter, width: base.diameter };
  if (base.kind === 'board') {
    return { length: base.length, width: base.shape === 'round' ? base.length : base.width };
  }
  const { length, width } = matSize(base);
  const border = base.kind === 'oval' ? 2 * base.border : 0;
  return { length: length + border, width: width + border };
}

/** The outline of the base: row 0 of the girth line. */
export function baseGirth(base: Base): number {
  const { length, width } = baseSize(base);
  if (isRound(base)) return Math.PI * length;
  // A rounded rectangle of corner radius q is shorter than the sharp one by (8 − 2π)·q.
  const rounding = base.kind === 'oval' ? (8 - 2 * Math.PI) * base.border : 0;
  return 2 * (length + width) - rounding;
}

/** True for a base whose outline is a circle. */
export function isRound(base: Base): boolean {
  return base.kind === 'wheel' || (base.kind === 'board' && base.shape === 'round');
}

/** The corners of the base; those of other bases than the mat are plain square ones. */
export function baseCorners(base: Base): Corners {
  if (base.kind === 'mat') return base.corners;
  return { kind: 'square', rows: 0, hold: 0, holdRows: 0 };
}

/** How far the middle of the base is pushed in; a board stays flat. */
export function baseLift(base: Base): number {
  return base.kind === 'board' ? 0 : base.centreLift;
}
