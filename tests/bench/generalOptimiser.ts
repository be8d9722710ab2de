/**
 * The settling by a general-purpose optimisation library in place of our own solver: the same energy,
 * minimised by fmin's conjugate gradients, with the tensions raised between the rounds (Hestenes 1969;
 * Powell 1969). Nothing of the solver is used but the energy itself.
 */
// Its one file is not written as a module: loaded as one, it makes the global `fmin`.
import 'fmin';
import { evaluate } from '../../src/model/settle/energy.ts';
import { gather, unfold } from '../../src/model/settle/fold.ts';
import { turnFrames } from '../../src/model/settle/frames.ts';
import type { Work } from '../../src/model/settle/work.ts';

/** How a settling by the library went. */
export interface GeneralOutcome {
  /** Energy over Young's modulus, mm³, the lengths being held. */
  readonly energy: number;
  /** Worst length residual of stakes and rows, mm. */
  readonly worstGap: number;
  /** Times the energy was evaluated. */
  readonly evaluations: number;
}

/**
 * Settles `own` in place by the library. `rounds` bounds the times the tensions are raised, and
 * `iterations` the library's own iterations in each; it ends early once lengths hold to `tolerance` mm.
 */
export function settleByLibrary(
  own: Work,
  { rounds = 40, iterations = 2000, tolerance = 1e-4 } = {},
): GeneralOutcome {
  const { elements, folded, frames, lead, net, out, tensions, x } = own;
  const gathered = new Float64Array(lead.length);
  let evaluations = 0;
  const energyAt = (point: readonly number[], gradient?: number[], raise = false): number => {
    evaluations++;
    for (let i = 0; i < lead.length; i++) lead[i] = point[i] ?? 0;
    unfold(folded, lead, x);
    const energy = evaluate(elements, tensions, frames, x, out, raise);
    if (gradient) {
      gather(folded, out.gradient, gathered);
      for (const index of folded.fixed) gathered.fill(0, 3 * index, 3 * index + 3);
      // In units of the penalty, so that the library's limit of 1e-5 on the gradient is one of 1e-5 mm.
      for (let i = 0; i < lead.length; i++) gradient[i] = (gathered[i] ?? 0) / elements.penalty;
    }
    return energy / elements.penalty;
  };
  let point: readonly number[] = Array.from(lead);
  let energy = Number.NaN;
  let worstGap = Number.POSITIVE_INFINITY;
  for (let round = 0; round < rounds; round++) {
    energyAt(point);
    turnFrames(net, elements, x, frames);
    point = fmin.conjugateGradient(energyAt, point, { maxIterations: iterations }).x;
    energy = energyAt(point, undefined, true) * elements.penalty;
    const gaps = [...out.segmentGap, ...out.loopGap, ...out.liftGap];
    worstGap = gaps.reduce((most, gap) => Math.max(most, Math.abs(gap)), 0);
    if (worstGap < tolerance) break;
  }
  return { energy, worstGap, evaluations };
}
