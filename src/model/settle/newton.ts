import { evaluate } from './energy.ts';
import { gather, unfold } from './fold.ts';
import { turnFrames } from './frames.ts';
import { factor, solve } from './skyline.ts';
import { assemble } from './stiffness.ts';
import type { Work } from './work.ts';

/** Worst relative length residuals of stake segments and of row loops. */
export interface Gaps {
  readonly segment: number;
  readonly loop: number;
}

/**
 * Brings `work.x`, the frames, the residuals and `gradient` (of the leads) up to date with `work.lead`,
 * having raised the tensions by what the lengths are off unless `raise` is false. Returns the energy.
 */
export function refresh(work: Work, gradient: Float64Array, raise = true): number {
  const { net, folded, elements, tensions, frames, out, lead, x } = work;
  unfold(folded, lead, x);
  turnFrames(net, elements, x, frames);
  const energy = evaluate(elements, tensions, frames, x, out, raise);
  gather(folded, out.gradient, gradient);
  for (const index of folded.fixed) gradient.fill(0, 3 * index, 3 * index + 3);
  return energy;
}

/** Energy at `work.lead` with frames and tensions as they are. */
export function energyAt(work: Work): number {
  unfold(work.folded, work.lead, work.x);
  return evaluate(work.elements, work.tensions, work.frames, work.x, work.out);
}

/** Factors the stiffness at the shape last refreshed; damps it more until it factors. */
export function factorHere(work: Work): void {
  const { folded, elements, tensions, frames, out, x, matrix } = work;
  let damping = 1e-9 * elements.penalty;
  for (let tries = 0; tries < 12; tries++) {
    assemble(elements, tensions, folded, frames, x, out, damping, matrix);
    if (factor(matrix)) break;
    damping = Math.max(100 * damping, 1e-6 * elements.penalty);
  }
  work.factored = true;
}

/** The step −H⁻¹·gradient, into `step`. Returns the longest move of a node in it, mm. */
export function newtonStep(work: Work, gradient: Float64Array, step: Float64Array): number {
  for (let i = 0; i < step.length; i++) step[i] = -gradient[i]!;
  solve(work.matrix, step);
  let most = 0;
  for (let i = 0; i < step.length; i += 3) {
    const square = step[i]! ** 2 + step[i + 1]! ** 2 + step[i + 2]! ** 2;
    // Written so that a NaN comes through.
    if (!(square <= most)) most = square;
  }
  return Math.sqrt(most);
}

/**
 * Worst relative residuals at the last evaluation. With `reachable` only those count whose tension is
 * below the cap: at the cap a length is given up, and the shape is a compromise.
 */
export function gaps(work: Work, reachable = false): Gaps {
  const { elements, tensions, out } = work;
  const cap = reachable ? 0.999 * elements.tensionCap : Number.POSITIVE_INFINITY;
  return {
    segment: worst(out.segmentGap, elements.segment.rest, tensions.segment, cap),
    loop: worst(
      out.loopGap.subarray(0, elements.loop.strict),
      elements.loop.target,
      tensions.loop,
      cap,
    ),
  };
}

function worst(
  gap: Float64Array,
  length: Float64Array,
  tension: Float64Array,
  cap: number,
): number {
  let most = 0;
  for (let i = 0; i < gap.length; i++) {
    if (Math.abs(tension[i]!) < cap) most = Math.max(most, Math.abs(gap[i]!) / length[i]!);
  }
  return most;
}
