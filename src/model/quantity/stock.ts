/** Figures of strands that a plan does not give. */

export const undyed = 'natural';

/** Thickness of a strip of cane of this width, mm. Common practice, no source. */
export function caneThickness(width: number): number {
  return Math.min(1.2, 0.35 * width);
}
