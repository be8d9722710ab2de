import { describe, expect, test } from 'vitest';
import { evaluate } from '../../../src/model/settle/energy.ts';
import { gather, pick, unfold } from '../../../src/model/settle/fold.ts';
import { turnFrames } from '../../../src/model/settle/frames.ts';
import type { Work } from '../../../src/model/settle/work.ts';
import { work } from '../../../src/model/settle/work.ts';
import { demos } from '../../../src/plan/demo/demos.ts';
import type { Plan } from '../../../src/plan/schema.ts';
import { netOf } from '../readings.ts';
import { belliedPlan, matPlan } from './shapes.ts';

/** Numbers from −½ to ½, the same every time (Lehmer's generator, Park & Miller 1988). */
function scatter(): () => number {
  let seed = 20_011;
  return () => {
    seed = (seed * 16_807) % 2_147_483_647;
    return seed / 2_147_483_647 - 0.5;
  };
}

/** The work on `plan`, its shape shaken by ±1 mm and its tensions set at random. */
function shaken(plan: Plan, planes: 'all' | 'none', next: () => number): Work {
  const own = work(netOf(plan), plan.set.stakes, planes);
  const { tensions, lead, folded, x, net, elements, frames } = own;
  for (const group of [tensions.segment, tensions.loop, tensions.lift]) {
    for (let i = 0; i < group.length; i++) group[i] = next();
  }
  for (let i = 0; i < lead.length; i++) lead[i] = (lead[i] ?? 0) + 2 * next();
  unfold(folded, lead, x);
  // Coordinates held at 0 on a mirror plane go back to it.
  lead.set(pick(folded, x));
  unfold(folded, lead, x);
  turnFrames(net, elements, x, frames);
  return own;
}

/** Worst relative disagreement of the gradient with central differences, over parts chosen at random. */
function disagreement(own: Work, next: () => number): number {
  const { elements, tensions, frames, folded, lead, x, out } = own;
  const energy = () => {
    unfold(folded, lead, x);
    return evaluate(elements, tensions, frames, x, out);
  };
  energy();
  const gradient = new Float64Array(lead.length);
  gather(folded, out.gradient, gradient);
  const step = 1e-5;
  let worst = 0;
  for (let sample = 0; sample < 90; sample++) {
    const i = Math.min(lead.length - 1, Math.floor((next() + 0.5) * lead.length));
    const here = lead[i] ?? 0;
    lead[i] = here + step;
    const ahead = energy();
    lead[i] = here - step;
    const behind = energy();
    lead[i] = here;
    const slope = (ahead - behind) / (2 * step);
    const told = gradient[i] ?? Number.NaN;
    worst = Math.max(worst, Math.abs(slope - told) / (Math.abs(told) + 1e-2));
  }
  return worst;
}

const cases: readonly (readonly [string, Plan])[] = [
  ['pinned corners that are held, with a lift', belliedPlan],
  ['square corners and a crease', matPlan({ lengthwise: 4, crosswise: 5, rows: 8 })],
  ['a split stake', demos[0].plan],
  ['twined rows and a split stake', demos[3]?.plan ?? demos[0].plan],
];

// Source: calculus. Central differences are off by step², about 1e-10 of the third derivative.
describe.each(cases)('the gradient of the energy equals central differences for %s', (_, plan) => {
  test.each(['all', 'none'] as const)('with mirror planes folded: %s', (planes) => {
    const next = scatter();
    expect(disagreement(shaken(plan, planes, next), next)).toBeLessThan(1e-5);
  });
});
