import type { Plan } from '../../plan/schema.ts';
import { sharesPlace } from '../base/base.ts';
import { girthLine } from '../girth/girthLine.ts';
import { basketNet } from '../net/basketNet.ts';
import { factorHere } from './newton.ts';
import type { Limits, Outcome } from './settle.ts';
import { settle, usualLimits } from './settle.ts';
import { startWithOddEnd } from './transfer.ts';
import type { Work } from './work.ts';
import { renewed, sameTopology, work } from './work.ts';

/** What is kept from one settling to the next, so that a small edit starts from the last shape. */
export interface ShapeMemory {
  work: Work | null;
  plan: Plan | null;
}

/** An empty memory: the first settling with it is a cold one. */
export function shapeMemory(): ShapeMemory {
  return { work: null, plan: null };
}

/** A settled net: its work, and how it went. */
export interface Settled {
  readonly work: Work;
  readonly outcome: Outcome;
}

/** Limits while a value is dragged: to 0.05 mm or so. At rest the plan is settled anew from the start. */
const dragLimits: Limits = { ...usualLimits, move: 4e-4, segment: 1e-3, loop: 1e-4 };

/** Rough limits for a shape that is only a start for the next one. */
const roughLimits: Limits = {
  iterations: 120,
  factorisations: 40,
  move: 6e-3,
  still: 1,
  segment: 2e-3,
  loop: 5e-4,
};

/**
 * Settles the basket of `plan`. Without a memory, or when the plan has other stakes or rows than the
 * last, from the start shape; else from the last shape, with its tensions and its factor, and to the
 * looser limits of a drag.
 */
export function settlePlan(
  plan: Plan,
  memory: ShapeMemory = shapeMemory(),
  limits: Limits = usualLimits,
): Settled {
  const net = basketNet(plan, girthLine(plan));
  const last = memory.work;
  const warm = last !== null && sameTopology(last.net, net) ? last : null;
  const settled = warm ? settleOn(warm, memory.plan, plan, net) : settleCold(plan, net, limits);
  // A warm start that went astray is settled again from the start shape.
  const result = warm && !settled.outcome.converged ? settleCold(plan, net, limits) : settled;
  const { work: done, outcome } = result;
  // The factor belongs to the shape before; `prepare`, or else the next settling, makes one for this.
  done.factored = false;
  memory.work = outcome.converged ? done : null;
  memory.plan = plan;
  return result;
}

/**
 * Makes ready for the next edit: factors the stiffness at the settled shape with its tensions, so that
 * the next settling has only to solve with it. Worth doing when there is nothing else to do.
 */
export function prepare({ work: last }: ShapeMemory): void {
  if (last && !last.factored) factorHere(last);
}

function settleOn(last: Work, before: Plan | null, plan: Plan, net: Work['net']): Settled {
  const next = renewed(last, net, plan.set.stakes);
  // A kept factor and the looser limits serve while only girths change; other edits change the stiffness
  // itself, and may leave the shape on the side of a soft valley.
  const onlyGirths = before !== null && allButGirths(before) === allButGirths(plan);
  if (!onlyGirths) next.factored = false;
  return { work: next, outcome: settle(next, onlyGirths ? dragLimits : usualLimits) };
}

/** What a plan's stiffness hangs on, as text: a plan that came through a worker's wire is a copy. */
function allButGirths({ base, oddEnd, bands, set, handle }: Plan): string {
  return JSON.stringify([base, oddEnd, bands, set, handle]);
}

/**
 * A second end at one place breaks one or both mirror planes. The plan without it is settled first, on a quarter of the
 * nodes, and its shape is the start for the whole one.
 */
function settleCold(plan: Plan, net: Work['net'], limits: Limits): Settled {
  const own = work(net, plan.set.stakes);
  if (!sharesPlace(plan)) return { work: own, outcome: settle(own, limits) };
  const evenPlan: Plan = { ...plan, oddEnd: { ...plan.oddEnd, kind: 'none' } };
  const even = work(basketNet(evenPlan, girthLine(plan)), plan.set.stakes);
  const rough = settle(even, roughLimits);
  startWithOddEnd(even, own);
  const outcome = settle(own, limits);
  return {
    work: own,
    outcome: {
      ...outcome,
      iterations: outcome.iterations + rough.iterations,
      factorisations: outcome.factorisations + rough.factorisations,
    },
  };
}
