import { describe, expect, test } from 'vitest';
import { settle } from '../../../src/model/settle/settle.ts';
import { settlePlan } from '../../../src/model/settle/settlePlan.ts';
import { work } from '../../../src/model/settle/work.ts';
import { demos } from '../../../src/plan/demo/demos.ts';
import type { Plan, PlanDocument } from '../../../src/plan/schema.ts';
import { netOf } from '../readings.ts';
import { belliedPlan, farthest, matPlan, moved } from './shapes.ts';

/** Keys that are lengths wherever they stand in a plan. */
const lengths = new Set(
  'width thickness gap lengthwise crosswise centreLift hub diameter at border length slot rise spread'.split(
    ' ',
  ),
);

/** The plan with every length in it `times` as long; counts, shares and what only the rim is made of stay. */
function enlarged(plan: Plan, times: number): Plan {
  const grown = <T>(value: T, key = '', inGaps = false): T => {
    if (Array.isArray(value)) return value.map((item) => grown(item, key, inGaps)) as T;
    if (value !== null && typeof value === 'object') {
      const entries = Object.entries(value).map(([name, item]) => [
        name,
        grown(item, name, key === 'gaps'),
      ]);
      return Object.fromEntries(entries) as T;
    }
    if (typeof value !== 'number' || !lengths.has(key)) return value;
    const isCount = (key === 'lengthwise' || key === 'crosswise') && !inGaps;
    return (isCount ? value : value * times) as T;
  };
  const points = plan.girthLine.points.map(({ row, girth }) => ({ row, girth: girth * times }));
  return {
    ...plan,
    base: grown(plan.base),
    bands: grown(plan.bands),
    handle: grown(plan.handle),
    girthLine: { ...plan.girthLine, points },
  };
}

// Source: dimensional analysis; only ratios of lengths and of stiffnesses decide the shape.
describe('with every length doubled the shape doubles', () => {
  test.each([...demos, { title: 'belly over pinned corners', plan: belliedPlan }])(
    'of the $title',
    ({ plan }) => {
      const single = settlePlan(plan).work.x;
      const double = settlePlan(enlarged(plan, 2)).work.x;
      const size = single.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
      expect(
        farthest(
          single,
          double.map((value) => value / 2),
        ) / size,
      ).toBeLessThan(1e-4);
    },
    60_000,
  );
});

// Source: invariance. Settled with the planes unused, nothing makes the shape symmetric but the energy.
describe('a plan with mirror planes settles to a shape with mirror planes, to 0.001 of its size', () => {
  const plans: readonly (readonly [string, Plan])[] = [
    ['a belly over pinned corners', belliedPlan],
    ['a square base and a straight wall', matPlan({ rows: 20 })],
    ['a flare', matPlan({ rows: 14, girths: [[14, 1.3]], base: { upsett: 'rolled' } })],
  ];
  test.each(plans)(
    'for %s',
    (_, plan) => {
      const net = netOf(plan);
      const own = work(net, plan.set.stakes, 'none');
      settle(own);
      const { x: acrossX, y: acrossY } = net.mirror;
      const size = own.x.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
      const flipX = moved(
        own.x,
        (node) => acrossX?.[node] ?? -1,
        (x, y, z) => [-x, y, z],
      );
      const flipY = moved(
        own.x,
        (node) => acrossY?.[node] ?? -1,
        (x, y, z) => [x, -y, z],
      );
      expect(farthest(own.x, flipX) / size).toBeLessThan(1e-3);
      expect(farthest(own.x, flipY) / size).toBeLessThan(1e-3);
    },
    60_000,
  );
});

// Source: invariance.
test('lengthwise and crosswise exchanged, the basket is the same one turned by a quarter', () => {
  const corners = { kind: 'pinned', rows: 5 } as const;
  const changes = {
    rows: 20,
    girths: [
      [10, 1.1],
      [20, 1],
    ] as const,
  };
  const base = { corners, upsett: 'rolled', centreLift: 10 } as Partial<PlanDocument['base']>;
  const long = matPlan({ ...changes, lengthwise: 4, crosswise: 7, base });
  const wide = matPlan({ ...changes, lengthwise: 7, crosswise: 4, base });
  const [one, other] = [settlePlan(long).work, settlePlan(wide).work];
  const turned = moved(
    one.x,
    (node) => node,
    (x, y, z) => [-y, x, z],
  );
  // Each node of the one lies on some node of the other.
  let worst = 0;
  for (let i = 0; i < turned.length; i += 3) {
    let nearest = Number.POSITIVE_INFINITY;
    for (let j = 0; j < other.x.length; j += 3) {
      const off = [0, 1, 2].map((d) => (turned[i + d] ?? 0) - (other.x[j + d] ?? 0));
      nearest = Math.min(nearest, Math.hypot(...off));
    }
    worst = Math.max(worst, nearest);
  }
  expect(worst).toBeLessThan(0.1);
});

describe('a start shape shaken by up to 1.5 mm settles to the same shape', () => {
  test.each([
    ['a belly over pinned corners', belliedPlan],
    ['a square base and a straight wall', matPlan({ rows: 20 })],
    ['the first demo', demos[0].plan],
  ] as const)(
    'for %s',
    (_, plan) => {
      const net = netOf(plan);
      const [calm, shaken] = [work(net, plan.set.stakes), work(net, plan.set.stakes)];
      shaken.lead.forEach((value, i) => {
        // 0 stands for a coordinate that a mirror plane holds.
        if (value !== 0) shaken.lead[i] = value + 1.5 * Math.sin(7 * i + 1);
      });
      expect(settle(calm).converged).toBe(true);
      expect(settle(shaken).converged).toBe(true);
      expect(farthest(calm.x, shaken.x)).toBeLessThan(0.1);
    },
    60_000,
  );
});

// Source: invariance. The base keeps its place, so a start moved as a whole comes back to it.
test('a start shape that stands elsewhere settles to the same shape in its old place', () => {
  const net = netOf(matPlan({ rows: 8 }));
  const [here, there] = [work(net, 0, 'none'), work(net, 0, 'none')];
  there.lead.forEach((value, i) => {
    there.lead[i] = value + ([3, -2, 4][i % 3] ?? 0);
  });
  settle(here);
  settle(there);
  expect(farthest(here.x, there.x)).toBeLessThan(0.1);
}, 60_000);
