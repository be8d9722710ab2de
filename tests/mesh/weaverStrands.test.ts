import { expect, test } from 'vitest';
import { basketMesh } from '../../src/mesh/basketMesh.ts';
import { field, stride } from '../../src/mesh/crossings.ts';
import { firstRows } from '../../src/mesh/firstRows.ts';
import { nodeNormals } from '../../src/mesh/surface.ts';
import { weaverIsOutside } from '../../src/mesh/weave.ts';
import { weaverStrands } from '../../src/mesh/weaverStrands.ts';
import { bandPlan, demoPlan, startBasket } from './demoBasket.ts';
import { dot, minus, pointOf, size } from './expectSound.ts';

const rounds = startBasket(
  demoPlan((plan) => {
    Object.assign(plan.bands[0] ?? {}, {
      weave: 'rounds',
      weaver: { section: 'flat', width: 4, thickness: 1.5 },
    });
  }),
);
const apart = (1 + 1.5) / 2;

test('a weaver lies outside one end and inside the next, half of both thicknesses off', () => {
  const normals = nodeNormals(rounds.net, rounds.positions);
  const strand = weaverStrands(rounds, normals)[11];
  rounds.net.ends.forEach(({ nodes }, end) => {
    const node = nodes[12] ?? 0;
    const data = strand?.path.data ?? new Float64Array();
    const here: readonly [number, number, number] = [
      data[end * stride] ?? 0,
      data[end * stride + 1] ?? 0,
      data[end * stride + 2] ?? 0,
    ];
    const off = dot(minus(here, pointOf(rounds.positions, node)), pointOf(normals, node));
    // a little more where the stake turns under it
    expect(off * ((12 + end) % 2 === 0 ? 1 : -1)).toBeGreaterThan(apart - 1e-6);
    expect(Math.abs(off)).toBeLessThan(1.1 * apart);
  });
});

test('a weaver of flat strand is as wide and as thick as its strand at every section', () => {
  const { positions, strand } = basketMesh(rounds).weavers;
  const sides = 8;
  const rings = positions.length / 3 / sides;
  let gathered = 0;
  for (let ring = 0; ring < rings; ring += 1) {
    const at = (side: number) => pointOf(positions, ring * sides + side);
    const width = size(minus(at(0), at(5)));
    const thickness = size(minus(at(2), at(7)));
    // the first rows are packed closer, since they lie on the stakes of the base
    const { share } = firstRows(rounds)(strand[ring * sides] ?? 0);
    expect(share).toBeGreaterThan(0.9);
    expect(width).toBeCloseTo(4 * share, 3);
    // in a sharp bend between stakes that crowd, it gathers on the inside and does not fold through itself
    if (Math.abs(thickness - 1.5) > 5e-4) gathered += 1;
    expect(thickness).toBeGreaterThan(1);
    expect(thickness).toBeLessThan(1.65);
  }
  expect(gathered / rings).toBeLessThan(0.02);
});

test('a stake keeps clear of every weaver at its crossing', () => {
  const normals = nodeNormals(rounds.net, rounds.positions);
  const { positions, strand } = basketMesh(rounds).weavers;
  const clear = { least: Number.POSITIVE_INFINITY };
  const { nodes } = rounds.net.ends[3] ?? { nodes: [] };
  for (let vertex = 0; vertex < strand.length; vertex += 1) {
    const node = nodes[strand[vertex] ?? 0] ?? 0;
    const from = minus(pointOf(positions, vertex), pointOf(rounds.positions, node));
    const out = dot(from, pointOf(normals, node));
    if (size(from) < 5) clear.least = Math.min(clear.least, Math.abs(out));
  }
  expect(clear.least).toBeGreaterThan(0.5 - 0.02);
});

test('a continuous weaver changes sides at every end, from its first row to its last', () => {
  const basket = startBasket(demoPlan());
  const normals = nodeNormals(basket.net, basket.positions);
  const [spiral, ...others] = weaverStrands(basket, normals);
  expect(others).toEqual([]);
  expect(spiral?.path.count).toBe(29 * 32 + 1);
  expect(spiral?.closed).toBe(false);
  const outside = Array.from({ length: 29 * 32 }, (_, at) =>
    weaverIsOutside('continuous', 1 + Math.floor(at / 29), at % 29, 29),
  );
  expect(outside.every((is, at) => at === 0 || is !== outside[at - 1])).toBe(true);
});

test('a continuous weaver begins and ends narrow and has its full width between', () => {
  const basket = startBasket(demoPlan());
  const path = weaverStrands(basket, nodeNormals(basket.net, basket.positions))[0]?.path;
  const width = (at: number) => path?.data[at * stride + field.width] ?? Number.NaN;
  const last = 29 * 32;
  // the first row is packed a little closer
  expect(width(0)).toBeCloseTo(0.2 * 4.4 * firstRows(basket)(1).share, 9);
  expect(width(last)).toBeCloseTo(0.2 * 4.4, 9);
  expect(width(1)).toBeGreaterThan(2.2);
  expect(width(29 * 10)).toBeCloseTo(4.4, 9);
});

test('a twill on an odd count is one spiral too', () => {
  const basket = startBasket(bandPlan({ weave: 'twill' }));
  const strands = weaverStrands(basket, nodeNormals(basket.net, basket.positions));
  expect(strands.map(({ closed }) => closed)).toEqual([false]);
});
