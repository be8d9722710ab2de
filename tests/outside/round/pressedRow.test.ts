/**
 * A row pressed inward goes oval at q = (n² − 1)·B/R³ a length, n = 2 first: M. Lévy 1884; Timoshenko &
 * Gere, Theory of Elastic Stability; geometry.md 1.4. At that load the energy of bending is what the
 * pressed area gives.
 */
import { expect, test } from 'vitest';
import { rowPressed } from '../../../src/model/finding/rowPressed.ts';
import { smoothLength } from '../../../src/model/net/smoothLength.ts';
import { refresh } from '../../../src/model/settle/newton.ts';
import { work } from '../../../src/model/settle/work.ts';
import { settleBasket } from '../../../src/model/settleBasket.ts';
import { handNet, loop } from '../handNet.ts';
import { off, roundPlan } from './roundBasket.ts';

const ends = 240;
const radius = 100;
const girth = 2 * Math.PI * radius;
const nodes = Array.from({ length: ends }, (_, i) => i);

type Point = readonly [x: number, y: number, z: number];

/** A row of girth `girth` out of round by about `out`·cos nθ, no part of it stretched. */
function waved(n: number, out: number): Point[] {
  const points = nodes.map((i): Point => {
    const angle = (2 * Math.PI * i) / ends;
    const [far, turned] = [
      radius + out * Math.cos(n * angle),
      angle - (out / (n * radius)) * Math.sin(n * angle),
    ];
    return [far * Math.cos(turned), far * Math.sin(turned), 0];
  });
  const even = nodes.map(() => 1);
  const scale = girth / smoothLength(points.flat(), even);
  return points.map(([x, y]) => [scale * x, scale * y, 0]);
}

/** Bending energy of the row over the weaver's stiffness, 1/mm. */
function bending(points: readonly Point[]): number {
  const net = handNet({
    points,
    ring: nodes.map(() => 0),
    stakes: [],
    rows: [loop(nodes, girth, 0, 0), loop(nodes, girth, 5, 1)],
    anchors: [0, ends / 4, ends / 2, (3 * ends) / 4],
  });
  const own = work(net, 0, 'none');
  own.elements.spring.stiffness.fill(0);
  return refresh(own, new Float64Array(own.lead.length), false);
}

function area(points: readonly Point[]): number {
  return points.reduce((sum, [x, y], i) => {
    const [u, v] = points[(i + 1) % ends] ?? [0, 0];
    return sum + (x * v - y * u) / 2;
  }, 0);
}

test.each([2, 3, 4])('a row pressed with (n² − 1)·B/R³, n = %i, no longer rounds itself', (n) => {
  const [circle, oval] = [waved(n, 0), waved(n, 0.5)];
  const load = (bending(oval) - bending(circle)) / (area(circle) - area(oval));
  expect(off(load, (n * n - 1) / radius ** 3)).toBeLessThan(0.01);
});

test('the finding speaks of pressed rows from a hoop force of 3B/R² on, 3B/R³ a length', () => {
  const reading = settleBasket(
    roundPlan({ diameter: 160, rows: 16, pitch: 4.4, girth: () => Math.PI * 160 }),
  );
  const foundAt = (share: number) => {
    const rowTension = Float64Array.from(reading.net.rows, ({ girth: round, stiffness }, row) =>
      row === 0 ? 0 : (-share * 3 * stiffness) / (round / (2 * Math.PI)) ** 2,
    );
    return rowPressed({ ...reading, settling: { ...reading.settling, rowTension } });
  };
  expect(foundAt(0.99)).toEqual([]);
  const [found] = foundAt(1.01);
  expect(found).toMatchObject({ kind: 'row-pressed', limit: 1 });
  expect(found?.value).toBeCloseTo(1.01, 6);
});
