/** The woven base as a rectangle: what the stakes and gaps add up to. */
import type { Base } from './schema.ts';

/** Gaps between neighbouring lengthwise stakes, and between neighbouring crosswise ones. */
export function baseGaps(base: Base): { readonly lengthwise: number; readonly crosswise: number } {
  return base.gaps ?? { lengthwise: base.gap ?? 0, crosswise: base.gap ?? 0 };
}

/**
 * Length and width of the base. The crosswise stakes, side by side, make its length; the
 * lengthwise stakes make its width: `n` stakes and `n − 1` gaps each.
 */
export function baseSize(base: Base): { readonly length: number; readonly width: number } {
  const gaps = baseGaps(base);
  return {
    length: base.crosswise * base.stake.width + (base.crosswise - 1) * gaps.crosswise,
    width: base.lengthwise * base.stake.width + (base.lengthwise - 1) * gaps.lengthwise,
  };
}

/** The outline of the woven base: row 0 of the girth line. */
export function baseGirth(base: Base): number {
  const { length, width } = baseSize(base);
  return 2 * (length + width);
}
