/** What the solver reports, in the terms of the basket's record. */
import type { Settling } from '../basket.ts';
import type { Outcome } from '../settle/settle.ts';
import type { Work } from '../settle/work.ts';

/** How the settling went. A row's tension is over Young's modulus, mm²; index = row, row 0 has none. */
export function settlingOf({ net, elements, out, tensions }: Work, outcome: Outcome): Settling {
  const { iterations, factorisations, converged, lastStep } = outcome;
  return {
    iterations,
    factorisations,
    converged,
    lastStep,
    worstGirthError: worst(out.loopGap.subarray(0, elements.loop.strict), elements.loop.target),
    worstStakeStretch: worst(out.segmentGap, elements.segment.rest),
    rowTension: Float64Array.from([0, ...tensions.loop.subarray(0, net.rows.length - 1)]),
  };
}

function worst(gap: Float64Array, length: Float64Array): number {
  let most = 0;
  for (let i = 0; i < gap.length; i++) most = Math.max(most, Math.abs(gap[i]! / length[i]!));
  return most;
}
