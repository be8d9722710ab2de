/** What must emerge without being drawn in. Source: `shaping-model.md`, "What must emerge". */
import { describe, expect, test } from 'vitest';
import type { Basket } from '../../src/model/basket.ts';
import { angleDeficits } from '../../src/model/read/angleDeficit.ts';
import { settleBasket } from '../../src/model/settleBasket.ts';
import { demos } from '../../src/plan/demo/demos.ts';
import type { PlanDocument } from '../../src/plan/schema.ts';
import { place } from '../model/readings.ts';
import { matPlan } from '../model/settle/shapes.ts';

function pinned(centreLift: number, corners: object = { kind: 'pinned', rows: 8 }): Basket {
  const base = { corners, upsett: 'rolled', centreLift } as Partial<PlanDocument['base']>;
  return settleBasket(matPlan({ lengthwise: 7, crosswise: 9, rows: 24, base }));
}

const height = ({ positions }: Basket, node: number) => place(positions, node)[2];

/** Heights of the base edge next to the corners, and of the middle of each side. */
function edgeHeights(basket: Basket) {
  const { net } = basket;
  const corners = net.ends.flatMap(({ corner, nodes }) =>
    corner ? [height(basket, nodes[0] ?? 0)] : [],
  );
  const middles = (['south', 'east', 'north', 'west'] as const).map((side) => {
    const ends = net.ends.filter((end) => end.side === side);
    const middle = ends[Math.floor(ends.length / 2)];
    return height(basket, middle?.nodes[0] ?? 0);
  });
  return { corners, middles };
}

describe('pinned corners with the middle pushed in', () => {
  const basket = pinned(15);

  test('stand on four feet', () => {
    expect(basket.summary.feet).toBe(4);
    expect(basket.findings.map(({ kind }) => kind)).not.toContain('rocks');
  });

  test('have their base edges arched between the feet', () => {
    const { corners, middles } = edgeHeights(basket);
    expect(Math.min(...middles)).toBeGreaterThan(Math.max(...corners) + 3);
  });

  test('have the middle of the base clear of the table', () => {
    expect(basket.summary.centreClearance).toBeGreaterThan(5);
    expect(basket.summary.footHeight).toBeGreaterThan(3);
  });

  test('have nothing else on the table', () => {
    const { net } = basket;
    for (let node = 0; node < net.baseNodeCount; node++) {
      const [x, y, z] = place(basket.positions, node);
      const inner =
        Math.abs(x) < basket.summary.baseLength / 4 || Math.abs(y) < basket.summary.baseWidth / 4;
      if (inner) expect(z).toBeGreaterThan(1);
    }
  });
});

describe('pinned corners without a lift', () => {
  const basket = pinned(0);

  test('let the middle hang lower than the corners', () => {
    const { corners } = edgeHeights(basket);
    expect(basket.summary.centreClearance).toBeLessThan(0.5);
    expect(Math.min(...corners)).toBeGreaterThan(3);
  });

  test('give a finding that it rocks, by how far the middle hangs', () => {
    const rocks = basket.findings.find(({ kind }) => kind === 'rocks');
    expect(rocks?.value).toBeGreaterThan(3);
  });
});

test('the first demo stands on four corners, as its notes promise', () => {
  const { summary, findings } = settleBasket(demos[0].plan);
  expect(summary.feet).toBe(4);
  expect(summary.centreClearance).toBeGreaterThan(5);
  expect(findings.map(({ kind }) => kind)).not.toContain('rocks');
});

test('the more the middle is pushed in, the higher it clears the table', () => {
  const clear = [8, 14, 20].map((lift) => pinned(lift).summary.centreClearance);
  expect(clear[0]).toBeLessThan(clear[1] ?? 0);
  expect(clear[1]).toBeLessThan(clear[2] ?? 0);
});

/** Angle deficit of one corner's patch: nodes within `reach` mm of the corner as the base lies flat, and up the wall. */
function cornerDeficit(basket: Basket, reach: number): number {
  const { net, positions, summary } = basket;
  const deficits = angleDeficits(net, positions);
  const corner = [summary.baseLength / 2, summary.baseWidth / 2] as const;
  const flat = (node: number) => {
    const [x, y] = place(net.start, node);
    return x > 0 && y > 0 ? Math.hypot(x - corner[0], y - corner[1]) : Number.POSITIVE_INFINITY;
  };
  const patch = new Set<number>();
  for (let node = 0; node < net.baseNodeCount; node++) {
    if (flat(node) <= reach) patch.add(node);
  }
  for (const { nodes } of net.ends) {
    let up = 0;
    nodes.forEach((node, row) => {
      up += ((net.rows[row]?.pitch ?? 0) + (net.rows[row - 1]?.pitch ?? 0)) / 2;
      if (Math.hypot(flat(nodes[0] ?? 0), up) <= reach) patch.add(node);
    });
  }
  return [...patch].reduce((sum, node) => sum + (deficits[node] ?? 0), 0);
}

// Source: Gauss–Bonnet; a corner of a box is a cone point of angle deficit π/2, `geometry.md` 1.3.
describe('each pinned corner is a cone point', () => {
  test('of angle deficit π/2 within 5 % where its weavers are set to the corner', () => {
    const basket = pinned(0, { kind: 'pinned', rows: 20, hold: 1, holdRows: 40 });
    expect(cornerDeficit(basket, 40) / (Math.PI / 2)).toBeGreaterThan(0.95);
    expect(cornerDeficit(basket, 40) / (Math.PI / 2)).toBeLessThan(1.05);
  });

  test('of angle deficit π/2 within 15 % where the wall rounds off above it', () => {
    for (const lift of [0, 15]) {
      expect(cornerDeficit(pinned(lift), 40) / (Math.PI / 2)).toBeGreaterThan(0.85);
      expect(cornerDeficit(pinned(lift), 40) / (Math.PI / 2)).toBeLessThan(1.15);
    }
  });
});
