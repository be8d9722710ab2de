/** How far a row may differ from the one below it. */
import { endCount, rowPitch } from '../../plan/counts.ts';
import type { Plan } from '../../plan/schema.ts';

export interface PullLimits {
  /** Most lean of the wall out or in, degrees from the vertical. */
  readonly lean: number;
  /** Most that is let in or drawn out between two stakes in one row, mm. */
  readonly perGap: number;
}

/**
 * A wall that leans by 50° still feels like a wall, and a thirty-second of an inch a gap is what a weaver
 * is pulled or eased by without the stakes being forced. Common practice, no source.
 */
export const usualLimits: PullLimits = { lean: 50, perGap: 25.4 / 32 };

/**
 * Most change of girth by row, mm, index 0 unused: in a round wall a lean φ changes the girth by
 * 2π·p·sin φ a row, and the gaps allow so much each. Where the plan itself asks for more, the plan's own
 * change is the limit: that was the maker's choice, and has its finding.
 *
 * @param girths planned girth by row, [0] the base girth, mm
 */
export function mostChanges(
  plan: Plan,
  girths: ArrayLike<number>,
  { lean, perGap }: PullLimits = usualLimits,
): Float64Array {
  const leaning = 2 * Math.PI * Math.sin((lean * Math.PI) / 180);
  const gaps = perGap * endCount(plan);
  return Float64Array.from(girths, (girth, row) => {
    if (row === 0) return 0;
    const asked = Math.abs(girth - (girths[row - 1] ?? girth));
    return Math.max(Math.min(leaning * rowPitch(plan, row), gaps), asked);
  });
}
