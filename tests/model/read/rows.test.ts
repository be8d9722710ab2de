import { expect, test } from 'vitest';
import type { Net } from '../../../src/model/net/net.ts';
import { readBasket } from '../../../src/model/read/readBasket.ts';
import { rowCurves } from '../../../src/model/read/rowCurve.ts';
import { calm, netOf, place, revolved, squarePlan } from '../readings.ts';

const plan = squarePlan();
const net = netOf(plan);
/** Middle of the wall to its outer face: half a stake and a weaver. */
const t = 0.5 + 1.5;

/** A cone that opens by 2 mm of radius a row, rows 5 mm apart along the stake: sin(lean) = 0.4. */
const lean = Math.asin(0.4);
const radius = (row: number) => 60 + 2 * row;
const rise = (row: number) => row * 5 * Math.cos(lean);
const cone = readBasket(plan, net, revolved(net, radius, rise), calm(net));

/** Rows read off the cone; corners do not reach out on it where the row has rounded off. */
const high = cone.rows.slice(12);

test('the girth of a round row is that of its circle and not of its polygon', () => {
  // The polygon is 0.21 % shorter at 28 ends (reference 1.0).
  for (const { row, girthReached } of high) {
    const reach = net.rows[row]?.cornerLength ?? 0;
    expect((girthReached - reach) / (2 * Math.PI * radius(row))).toBeCloseTo(1, 4);
  }
});

test('the tape girth of a round row is 2πt more than its girth', () => {
  for (const { girthReached, tapeGirth } of high) {
    expect(tapeGirth - girthReached).toBeCloseTo(2 * Math.PI * t, 2);
  }
});

test('a round row measures two radii and two thicknesses across, both ways', () => {
  for (const { row, length, width } of high) {
    expect(length).toBeCloseTo(2 * (radius(row) + t), 0);
    expect(width).toBeCloseTo(length, 9);
  }
});

test('the stakes of a cone lean by its half angle', () => {
  // dr/p = 0.4, so asin 0.4 = 23.578° (reference 1.1).
  for (const row of cone.rows.slice(1)) {
    expect(row.lean).toBeCloseTo(23.5781784782, 6);
    expect(row.leanMost).toBeCloseTo(23.5781784782, 6);
  }
});

test('the lean of a wall that closes is negative', () => {
  const closing = readBasket(
    plan,
    net,
    revolved(net, (k) => 100 - 2 * k, rise),
    calm(net),
  );
  expect(closing.rows.at(-1)?.lean).toBeCloseTo(-23.5781784782, 6);
});

test('rows of a cone stand one pitch times the cosine of the lean above one another', () => {
  const [below, above] = cone.rows.slice(-2);
  const step = 5 * Math.cos(lean);
  expect((above?.heightSide ?? 0) - (below?.heightSide ?? 0)).toBeCloseTo(step, 9);
  expect((above?.heightCorner ?? 0) - (below?.heightCorner ?? 0)).toBeCloseTo(step, 9);
});

test('the gap between two stakes is their spacing less one width', () => {
  const last = cone.rows.at(-1);
  const gap = (2 * Math.PI * radius(20)) / 28 - 10;
  expect(last?.gapLeast).toBeCloseTo(gap, 2);
});

test('the wall grows by the pitch of each row', () => {
  expect(cone.rows.map(({ wall }) => wall)).toEqual(cone.rows.map(({ row }) => 5 * row));
});

test('the change is that of the tape girth, and a 28th of it for each gap', () => {
  cone.rows.slice(1).forEach(({ tapeGirth, change, changePerGap }, index) => {
    expect(change).toBeCloseTo(tapeGirth - (cone.rows[index]?.tapeGirth ?? 0), 9);
    expect(changePerGap).toBeCloseTo(change / 28, 9);
  });
});

/** Every row straight up from the base's outline: a box. */
function boxed(): Float64Array {
  const box = Float64Array.from(net.start, (value, i) => (i % 3 === 2 ? 0 : value));
  net.ends.forEach(({ nodes }) => {
    nodes.forEach((node, row) => {
      const [x, y] = place(net.start, nodes[0] ?? 0);
      box.set([x, y, 5 * row], 3 * node);
    });
  });
  return box;
}

/** The box read with every row as sharp at its corners as the base is. */
const sharp: Net = {
  ...net,
  rows: net.rows.map((row) => ({ ...row, cornerLength: net.rows[0]?.cornerLength ?? 0 })),
};
const box = readBasket(plan, sharp, boxed(), calm(net));

test('a row round the sharp base is as long as its outline', () => {
  expect(box.rows[0]?.girthReached).toBeCloseTo(400, 0);
});

test('a row round the sharp base measures the outline and two thicknesses across', () => {
  expect(box.rows[0]?.length).toBeCloseTo(100 + 2 * t, 0);
});

test('a tape round the sharp base lies on all of it', () => {
  const { girthReached = 0, tapeGirth = 0 } = box.rows[0] ?? {};
  expect(Math.abs(tapeGirth - girthReached - 2 * Math.PI * t)).toBeLessThan(0.5);
});

test('stakes that meet at a sharp corner have no gap and do not overlap', () => {
  expect(Math.abs(box.rows[0]?.gapLeast ?? 9)).toBeLessThan(0.3);
  expect(box.rows[0]?.gapMost).toBeCloseTo(5, 0);
});

test('the curve drawn through a row is as long as the row is said to be', () => {
  for (const own of [net, sharp]) {
    for (const { points, segment } of rowCurves(own, boxed())) {
      const count = points.length / 3;
      let drawn = 0;
      for (let i = 0; i < count; i++) {
        const [x, y, z] = place(points, i);
        const [u, v, w] = place(points, (i + 1) % count);
        drawn += Math.hypot(u - x, v - y, w - z);
      }
      const said = segment.reduce((sum, length) => sum + length, 0);
      expect(Math.abs(drawn / said - 1)).toBeLessThan(1e-3);
    }
  }
});

test('two halves of a split stake touch where they part, and have no gap below 0', () => {
  const split = squarePlan({
    oddEnd: { kind: 'split', at: 'middle of a long side' },
    bands: [{ ...plan.bands[0], weave: 'continuous' }] as typeof plan.bands,
  });
  const own = netOf(split);
  const shape = revolved(
    own,
    () => 70,
    (row) => 5 * row,
  );
  const foot = own.ends.findIndex((end, e) => end.nodes[0] === own.ends[e + 1]?.nodes[0]);
  const [left = 0, right = 0] = [own.ends[foot]?.nodes[1], own.ends[foot + 1]?.nodes[1]];
  shape.set(place(shape, left), 3 * right);
  shape[3 * right] = (shape[3 * right] ?? 0) + 1;
  const { rows } = readBasket(split, own, shape, calm(own));
  expect(rows[0]?.gapLeast).toBe(0);
});
