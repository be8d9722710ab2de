import { anderson } from './anderson.ts';
import type { Gaps } from './newton.ts';
import { energyAt, factorHere, gaps, newtonStep, refresh } from './newton.ts';
import { pointSize, readPoint, readResidual, writePoint } from './point.ts';
import type { Work } from './work.ts';

/** When to stop, and how much work to spend. */
export interface Limits {
  /** Iterations at the most, and how many of them may factor the stiffness. */
  readonly iterations: number;
  readonly factorisations: number;
  /** Longest Newton step left, as a share of the mean stake spacing. */
  readonly move: number;
  /**
   * Steps as short as that in a row before the shape counts as settled: in a soft direction the positive
   * part of the Hessian is too stiff, and one short step proves little (of 276 random small designs 13 were
   * out by more than 0.1 mm after two, 2 after four, with `move` a third as long).
   */
  readonly still: number;
  /** Relative length residuals of stake segments and of row loops. */
  readonly segment: number;
  readonly loop: number;
}

/**
 * Enough that four times the work moves no node by 0.1 mm (tests/model/settle): at a spacing of 20 mm
 * the last four steps were under 0.0006 mm.
 */
export const usualLimits: Limits = {
  iterations: 400,
  factorisations: 80,
  move: 3e-5,
  still: 4,
  segment: 5e-4,
  loop: 5e-5,
};

/** How the settling went. */
export interface Outcome {
  readonly iterations: number;
  readonly factorisations: number;
  readonly converged: boolean;
  /** Longest move of a node in the last Newton step, mm. */
  readonly lastStep: number;
}

/** Steps the acceleration remembers; without progress for `patience` steps the factor is renewed. */
const depth = 8;
const patience = 6;
/** Close enough for the second phase: step as a share of the spacing, and relative residuals. */
const nearMove = 0.1;
const nearGap = 0.01;
/** Or so still that lengths this far off will not come nearer: a plan that cannot be met. */
const stuckMove = 0.02;
/** Tensions are raised only once the lengths are this near: before, they would learn nothing true. */
const raiseBelow = 0.05;

/**
 * Settles the work's shape in place: augmented Lagrangian on stake segments and row lengths, with the
 * positive part of the Hessian.
 *
 * 1. Far from balance: Newton steps, each with a new factor, shortened until the energy falls enough.
 * 2. Near it: one factor is kept, and Anderson's acceleration makes up for its age and for the part of
 *    the Hessian left out. It is renewed when the steps stop shrinking; when they grow far, phase 1 again.
 *
 * Tried and left out (first demo basket, factorisations to the end): a penalty 60 times as strong (145 and
 * not converged, against 18); the full Hessian near the end (fails to factor one time in two); a factor
 * kept from before the tensions were known (first steps of centimetres).
 */
export function settle(work: Work, limits: Limits = usualLimits): Outcome {
  const size = work.lead.length;
  const spacing = (work.net.rows[0]?.girth ?? 1) / (work.net.rows[0]?.nodes.length ?? 1);
  const cap = 2 * spacing;
  const gradient = new Float64Array(size);
  const step = new Float64Array(size);
  const point = new Float64Array(pointSize(work));
  const residual = new Float64Array(point.length);
  const mix = anderson(point.length, depth);
  let near = work.close;
  let factorisations = 0;
  let best = Number.POSITIVE_INFINITY;
  let sinceBest = 0;
  let calm = 0;
  let longest = 0;
  let worst = 1;
  const renew = () => {
    work.factored = false;
    mix.forget();
    sinceBest = 0;
  };

  let iteration = 1;
  for (; iteration <= limits.iterations; iteration++) {
    readPoint(work, point);
    const energy = refresh(work, gradient, near ? iteration > 1 : worst < raiseBelow);
    if (!work.factored) {
      if (factorisations === limits.factorisations) break;
      factorHere(work);
      factorisations++;
    }
    longest = newtonStep(work, gradient, step);
    const off = gaps(work);
    worst = Math.max(off.segment, off.loop);
    calm = longest < limits.move * spacing && holds(gaps(work, true), limits) ? calm + 1 : 0;
    if (calm >= limits.still)
      return { iterations: iteration, factorisations, converged: true, lastStep: longest };
    if (!near) {
      const scale = search(work, energy, gradient, step, Math.min(1, cap / longest));
      near =
        scale === 1 &&
        ((longest < nearMove * spacing && worst < nearGap) || longest < stuckMove * spacing);
      best = Number.POSITIVE_INFINITY;
      renew();
      continue;
    }
    if (!(longest <= cap && longest <= 30 * best)) {
      near = false;
      renew();
      continue;
    }
    if (longest < 0.7 * best) {
      best = longest;
      sinceBest = 0;
    } else if (++sinceBest > patience) {
      best = longest;
      renew();
    }
    readResidual(work, point, step, residual);
    mix.next(point, residual);
    writePoint(work, point);
  }
  return { iterations: iteration - 1, factorisations, converged: false, lastStep: longest };
}

/** Moves the leads along `step`, halving it until the energy falls as it should. Returns the share taken. */
function search(
  work: Work,
  energy: number,
  gradient: Float64Array,
  step: Float64Array,
  most: number,
): number {
  const { lead } = work;
  const before = Float64Array.from(lead);
  let slope = 0;
  for (let i = 0; i < lead.length; i++) slope += gradient[i]! * step[i]!;
  let scale = Number.isFinite(most) ? most : 0;
  for (let halving = 0; ; halving++) {
    for (let i = 0; i < lead.length; i++) lead[i] = before[i]! + scale * step[i]!;
    const now = energyAt(work);
    if (now <= energy + 1e-4 * scale * slope + 1e-12 * Math.abs(energy)) return scale;
    if (halving === 12 || scale === 0) break;
    scale *= 0.5;
  }
  if (!Number.isFinite(energyAt(work))) lead.set(before);
  return scale;
}

function holds(off: Gaps, limits: Limits): boolean {
  return off.segment < limits.segment && off.loop < limits.loop;
}
