/** Baskets of known shape, for the tests of what is read off them. */
import type { Measured, Settling } from '../../src/model/basket.ts';
import { girthLine } from '../../src/model/girth/girthLine.ts';
import { basketNet } from '../../src/model/net/basketNet.ts';
import type { Net } from '../../src/model/net/net.ts';
import { readBasket } from '../../src/model/read/readBasket.ts';
import type { Plan, PlanDocument } from '../../src/plan/schema.ts';
import { planSchema } from '../../src/plan/schema.ts';

/** 7 + 7 flat stakes, 28 ends, a square base of 100 mm, 20 rows 5 mm high. */
const square = {
  format: 'girthline',
  version: 1,
  name: 'Square',
  base: {
    kind: 'mat',
    lengthwise: 7,
    crosswise: 7,
    stake: { section: 'flat', width: 10, thickness: 1 },
    gap: 5,
    corners: { kind: 'square' },
    upsett: 'rolled',
    centreLift: 0,
  },
  bands: [
    {
      rows: 20,
      weave: 'rounds',
      weaver: { section: 'flat', width: 5, thickness: 1.5 },
      packing: 1,
    },
  ],
  girthLine: { points: [{ row: 20, girth: 400 }] },
} as const satisfies PlanDocument;

/** The square plan with some keys changed. */
export function squarePlan(changes: Partial<PlanDocument> = {}): Plan {
  return planSchema.parse({ ...square, ...changes });
}

/** The same with some keys of its base changed. */
export function squareBase(changes: Partial<PlanDocument['base']>): Plan {
  return squarePlan({ base: { ...square.base, ...changes } as PlanDocument['base'] });
}

/** The net that a plan asks for. */
export function netOf(plan: Plan): Net {
  return basketNet(plan, girthLine(plan));
}

/** A settling in which nothing was amiss. */
export function calm(net: Net): Settling {
  return {
    iterations: 10,
    factorisations: 5,
    converged: true,
    lastStep: 0,
    worstGirthError: 0,
    worstStakeStretch: 0,
    rowTension: new Float64Array(net.rows.length),
  };
}

/** What is read off `shape`, which is the start shape where none is given. */
export function readingOf(
  plan: Plan,
  shape?: Float64Array,
  settling?: Partial<Settling>,
): Measured {
  const net = netOf(plan);
  return readBasket(plan, net, shape ?? net.start, { ...calm(net), ...settling });
}

/** x, y, z of node `node`. */
export function place(points: ArrayLike<number>, node: number): [number, number, number] {
  const at = (d: number) => points[3 * node + d] ?? Number.NaN;
  return [at(0), at(1), at(2)];
}

/**
 * The net's nodes on a round vessel: a flat base at the height of `height(0)`, its edge at radius
 * `radius(0)`, and row k's ends evenly round at `radius(k)` and `height(k)`.
 */
export function revolved(
  net: Net,
  radius: (row: number) => number,
  height: (row: number) => number,
): Float64Array {
  const shape = Float64Array.from(net.start, (value, i) => (i % 3 === 2 ? height(0) : value));
  net.rows.forEach(({ nodes }, row) => {
    nodes.forEach((node, e) => {
      const angle = (2 * Math.PI * (e + 0.5)) / nodes.length - (3 * Math.PI) / 4;
      const [r, z] = [radius(row), height(row)];
      shape.set([r * Math.cos(angle), r * Math.sin(angle), z], 3 * node);
    });
  });
  return shape;
}

/** The square basket with its base domed: `rise` mm higher in the middle than at its corners. */
export function domed(rise: number): Measured {
  const plan = squarePlan();
  const net = netOf(plan);
  const shape = Float64Array.from(net.start);
  const height = (node: number) => {
    const [x, y] = place(net.start, node);
    return -(rise * (x * x + y * y)) / 4050;
  };
  for (let node = 0; node < net.baseNodeCount; node++) shape[3 * node + 2] = height(node);
  for (const { nodes } of net.ends) {
    const foot = nodes[0] ?? 0;
    const [x, y] = place(net.start, foot);
    nodes.forEach((node, row) => {
      shape.set([x, y, height(foot) + (row === 0 ? 0 : 5 * row - 2.5)], 3 * node);
    });
  }
  return readingOf(plan, shape);
}
