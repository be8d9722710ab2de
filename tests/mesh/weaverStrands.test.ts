import { expect, test } from 'vitest';
import { basketMesh } from '../../src/mesh/basketMesh.ts';
import type { Crossings } from '../../src/mesh/crossings.ts';
import { field, stride } from '../../src/mesh/crossings.ts';
import { firstRows } from '../../src/mesh/firstRows.ts';
import { stakeStrands } from '../../src/mesh/stakeStrands.ts';
import { nodeNormals } from '../../src/mesh/surface.ts';
import { sweepStrands } from '../../src/mesh/sweepStrands.ts';
import { weaverIsOutside } from '../../src/mesh/weave.ts';
import { weaverStrands } from '../../src/mesh/weaverStrands.ts';
import { bandPlan, demoPlan, startBasket } from './demoBasket.ts';
import type { Point } from './expectSound.ts';
import { cross, dot, minus, pointOf, size } from './expectSound.ts';

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
    const off = dot(minus(here, pointOf(rounds.positions, node)), [
      data[end * stride + field.normal] ?? 0,
      data[end * stride + field.normal + 1] ?? 0,
      data[end * stride + field.normal + 2] ?? 0,
    ]);
    expect(off * ((12 + end) % 2 === 0 ? 1 : -1)).toBeGreaterThan(apart - 1e-6);
  });
});

test('where a stake turns under a weaver, the weaver lies farther off, by what the stake’s face rises under it', () => {
  const normals = nodeNormals(rounds.net, rounds.positions);
  const drawn = stakeStrands(rounds, normals, 2).map((one) => sweepStrands([one]).positions);
  let most = 0;
  for (const row of [18, 20, 24, 28]) {
    const { data } = weaverStrands(rounds, normals)[row - 1]?.path ?? { data: new Float64Array() };
    rounds.net.ends.forEach(({ nodes, stake }, end) => {
      const at = (place: number) => {
        const from = end * stride + place;
        return [data[from] ?? 0, data[from + 1] ?? 0, data[from + 2] ?? 0] as const;
      };
      const sign = (row + end) % 2 === 0 ? 1 : -1;
      const middle = pointOf(rounds.positions, nodes[row] ?? 0);
      const normal = at(field.normal);
      const given = sign * dot(minus(at(field.position), middle), normal) - apart;
      const risen = risingFace(stake, middle, sign, {
        along: at(field.tangent),
        normal,
        half: data[end * stride + field.bearing] ?? 0,
        wide: (data[end * stride + field.width] ?? 0) / 2,
      });
      // within a hair of the drawn face, whose edges are eased
      expect(given - Math.max(0, risen)).toBeLessThan(0.02);
      expect(given - Math.max(0, risen)).toBeGreaterThan(-0.02);
      most = Math.max(most, risen);
    });
  }
  expect(most).toBeGreaterThan(0.1);

  /** The highest point of the drawn stake's face over the plane of its middle, within where the weaver crosses it, mm. */
  function risingFace(
    stake: number,
    middle: Point,
    sign: 1 | -1,
    patch: { along: Point; normal: Point; half: number; wide: number },
  ): number {
    const across = cross(patch.normal, patch.along);
    const positions = drawn[stake] ?? new Float32Array();
    const sides = 8;
    const corners = sign === 1 ? [2, 3] : [6, 7];
    const at = (ring: number, v: number) => {
      const [one, other] = corners.map((side) => pointOf(positions, ring * sides + side));
      return one && other ? add(add([0, 0, 0], one, 1 - v), other, v) : middle;
    };
    let highest = Number.NEGATIVE_INFINITY;
    for (let ring = 0; ring + 3 < positions.length / 3 / sides; ring += 1) {
      if (size(minus(at(ring, 0.5), middle)) > 12) continue;
      for (let v = 0; v <= 1; v += 0.1) {
        const [low, high] = [at(ring, v), at(ring + 1, v)];
        for (let s = 0; s <= 1; s += 0.02) {
          const off = minus(add(add([0, 0, 0], low, 1 - s), high, s), middle);
          const isUnder =
            Math.abs(dot(off, patch.along)) <= patch.half &&
            Math.abs(dot(off, across)) <= patch.wide;
          if (isUnder) highest = Math.max(highest, sign * dot(off, patch.normal) - 0.5);
        }
      }
    }
    return highest;
  }
});

function add(one: Point, other: Point, times: number): Point {
  return [one[0] + times * other[0], one[1] + times * other[1], one[2] + times * other[2]];
}

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
    expect(width).toBeLessThan(4 * share + 5e-4);
    expect(width).toBeGreaterThan(0.75 * 4 * share);
    // in a sharp bend between stakes that crowd, it gathers on the inside and does not fold through itself
    if (Math.abs(thickness - 1.5) > 5e-4 || 4 * share - width > 5e-4) gathered += 1;
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
  expect(width(29 * 10)).toBeGreaterThan(0.95 * 4.4);
  expect(width(29 * 20)).toBeCloseTo(4.4, 9);
});

test('a twill on an odd count is one spiral too', () => {
  const basket = startBasket(bandPlan({ weave: 'twill' }));
  const strands = weaverStrands(basket, nodeNormals(basket.net, basket.positions));
  expect(strands.map(({ closed }) => closed)).toEqual([false]);
});

test('two weavers that chase each other climb two rows a turn, half a turn apart, and never lie on one side together', () => {
  const basket = startBasket(
    demoPlan((plan) => {
      plan.oddEnd = { kind: 'none' } as never;
      Object.assign(plan.bands[0] ?? {}, { weave: 'chased' });
    }),
  );
  const ends = basket.net.ends.length;
  expect(ends).toBe(28);
  const strands = weaverStrands(basket, nodeNormals(basket.net, basket.positions));
  expect(strands.map(({ closed }) => closed)).toEqual([false, false]);
  for (const { path } of strands) expect(path.count).toBe(16 * ends + 1);
  const [first, second] = strands.map(({ path }) => passes(path, basket.positions));
  // over a foot of end 3 in the middle of the wall both pass in turn, a row apart
  const both = [...(first ?? []), ...(second ?? [])]
    .filter(({ end, high }) => end === 3 && high > 60 && high < 100)
    .sort((one, other) => one.high - other.high);
  expect(both.length).toBeGreaterThan(6);
  both.slice(1).forEach((pass, at) => {
    const below = both[at];
    expect(pass.isFirst).not.toBe(below?.isFirst);
    expect(pass.isOutside).not.toBe(below?.isOutside);
  });
  // each comes by again two rows further up the leaning wall
  both.slice(2).forEach(({ high }, at) => {
    const rise = (high - (both[at]?.high ?? 0)) / (2 * 4.488);
    expect(rise).toBeGreaterThan(0.85);
    expect(rise).toBeLessThan(1.01);
  });

  function passes(path: Crossings, positions: Float64Array) {
    return Array.from({ length: path.count }, (_, at) => {
      const here = [0, 1, 2].map((axis) => path.data[at * stride + axis] ?? 0) as [
        number,
        number,
        number,
      ];
      // the end it meets is the one whose stake is nearest
      const near = basket.net.ends.map(({ nodes }) => {
        const from = minus(here, pointOf(positions, nodes[path.strand[at] ?? 0] ?? 0));
        return size(from);
      });
      const end = near.indexOf(Math.min(...near));
      const node = basket.net.ends[end]?.nodes[path.strand[at] ?? 0] ?? 0;
      const normal = pointOf(nodeNormals(basket.net, positions), node);
      const off = dot(minus(here, pointOf(positions, node)), normal);
      return { end, high: here[2], isOutside: off > 0, isFirst: path === strands[0]?.path };
    });
  }
});

test('a twined pair goes on as two strands, one outside wherever the other is inside', () => {
  const basket = startBasket(
    bandPlan({ weave: 'twined', weaver: { section: 'round', width: 2, thickness: 2 } }),
  );
  const normals = nodeNormals(basket.net, basket.positions);
  const [one, other, ...more] = weaverStrands(basket, normals);
  expect(more).toEqual([]);
  expect([one?.closed, other?.closed]).toEqual([false, false]);
  expect([one?.path.count, other?.path.count]).toEqual([29 * 32 + 1, 29 * 32 + 1]);
  for (let at = 1; at < 29 * 32; at += 1) {
    const place = (strand = one) =>
      [0, 1, 2].map((axis) => strand?.path.data[at * stride + axis] ?? 0) as [
        number,
        number,
        number,
      ];
    const row = one?.path.strand[at] ?? 0;
    const normal = [0, 1, 2].map((axis) => one?.path.data[at * stride + field.normal + axis] ?? 0);
    const between = dot(minus(place(one), place(other)), normal as unknown as Point);
    const isOutside = weaverIsOutside('twined', row, at % 29, 29);
    expect(Math.sign(between)).toBe(isOutside ? 1 : -1);
    // half of stake and strand on either side
    expect(Math.abs(between)).toBeGreaterThan(0.95 * (1 + 2));
  }
});
