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

/** Worst relative residuals at the last evaluation. */
export function gaps({ elements: { segment, loop }, out }: Work): Gaps {
  let ofSegment = 0;
  for (let i = 0; i < segment.rest.length; i++) {
    ofSegment = Math.max(ofSegment, Math.abs(out.segmentGap[i]!) / segment.rest[i]!);
  }
  let ofLoop = 0;
  for (let r = 0; r < loop.target.length; r++) {
    ofLoop = Math.max(ofLoop, Math.abs(out.loopGap[r]!) / loop.target[r]!);
  }
  return { segment: ofSegment, loop: ofLoop };
}
