/**
 * The plain way to settle the same energy: dynamic relaxation of every node (no mirror planes, no
 * factor, no acceleration), with the step control FIRE of Bitzek et al., Phys. Rev. Lett. 97 (2006)
 * 170201, its constants as published, and the tensions raised by what the lengths are off at every
 * `between` steps. It is told when it is there: near enough to the shape that the app settles to.
 */
import { girthLine } from '../../src/model/girth/girthLine.ts';
import { basketNet } from '../../src/model/net/basketNet.ts';
import { elements } from '../../src/model/settle/elements.ts';
import { evaluate, evaluation } from '../../src/model/settle/energy.ts';
import { fold } from '../../src/model/settle/fold.ts';
import { frames, turnFrames } from '../../src/model/settle/frames.ts';
import type { Plan } from '../../src/plan/schema.ts';

export interface PlainSettling {
  readonly milliseconds: number;
  /** Times the energy and its gradient were worked out. */
  readonly evaluations: number;
  /** Farthest node from the goal at the end, mm. */
  readonly apart: number;
  /** True when it came within the distance asked for. */
  readonly arrived: boolean;
}

export interface PlainOptions {
  /** Positions to come to, x, y, z a node, mm; and how near. */
  readonly goal: Float64Array;
  readonly within: number;
  readonly mostEvaluations: number;
}

/** Steps from one raising of the tensions to the next. */
const between = 200;

/** Longest move of a coordinate in one step, mm. */
const longestMove = 1;

/** Settles `plan` from its start shape until it is within reach of the goal. */
export function plainSettle(plan: Plan, { goal, within, mostEvaluations }: PlainOptions) {
  const net = basketNet(plan, girthLine(plan));
  const list = elements(net, fold(net, 'none'), plan.set.stakes);
  const tensions = {
    segment: new Float64Array(list.segment.rest.length),
    loop: new Float64Array(list.loop.target.length),
    lift: new Float64Array(1),
  };
  const turned = frames(list);
  const out = evaluation(list, net.nodeCount);
  const x = Float64Array.from(net.start);
  const motion = fire(x.length, 0.1 / Math.sqrt(list.penalty));
  const began = performance.now();
  let evaluations = 0;
  let apart = farthest(x, goal);
  while (evaluations < mostEvaluations && !(apart <= within)) {
    turnFrames(net, list, x, turned);
    for (let step = 0; step < between; step += 1) {
      evaluate(list, tensions, turned, x, out, step === 0 && evaluations > 0);
      motion(x, out.gradient);
    }
    evaluations += between;
    apart = farthest(x, goal);
  }
  const milliseconds = performance.now() - began;
  return { milliseconds, evaluations, apart, arrived: apart <= within } satisfies PlainSettling;
}

/** One step of FIRE after another on `size` coordinates of unit mass; `firstStep` in time units. */
function fire(size: number, firstStep: number) {
  const velocity = new Float64Array(size);
  let step = firstStep;
  let steering = 0.1;
  let downhill = 0;
  return (x: Float64Array, gradient: Float64Array) => {
    let power = 0;
    let speed = 0;
    let force = 0;
    for (let i = 0; i < size; i += 1) {
      const g = gradient[i] ?? 0;
      const v = velocity[i] ?? 0;
      power -= g * v;
      speed += v * v;
      force += g * g;
    }
    if (power > 0) {
      const towards = steering * Math.sqrt(speed / (force + 1e-300));
      for (let i = 0; i < size; i += 1) {
        velocity[i] = (1 - steering) * (velocity[i] ?? 0) - towards * (gradient[i] ?? 0);
      }
      downhill += 1;
      if (downhill > 5) {
        step = Math.min(1.1 * step, 10 * firstStep);
        steering *= 0.99;
      }
    } else {
      velocity.fill(0);
      downhill = 0;
      step *= 0.5;
      steering = 0.1;
    }
    for (let i = 0; i < size; i += 1) {
      velocity[i] = (velocity[i] ?? 0) - step * (gradient[i] ?? 0);
      const move = step * (velocity[i] ?? 0);
      x[i] = (x[i] ?? 0) + Math.max(-longestMove, Math.min(longestMove, move));
    }
  };
}

/** Distance between the two places of the node that is farthest off, mm. */
function farthest(one: Float64Array, other: Float64Array): number {
  let most = 0;
  for (let at = 0; at < one.length; at += 3) {
    const [dx, dy, dz] = [0, 1, 2].map((axis) => (one[at + axis] ?? 0) - (other[at + axis] ?? 0));
    const distance = Math.hypot(dx ?? 0, dy ?? 0, dz ?? 0);
    // written so that a NaN comes through
    if (!(distance <= most)) most = distance;
  }
  return most;
}
