/**
 * Volumes against a general-purpose solid library (manifold-3d): the same surface, closed by a lid, cut off at
 * the level of the rim. A basket's capacity is that of its chords and what its rows' curves enclose beyond
 * them; here the curves are drawn into the surface itself.
 */
import solids from 'manifold-3d';
import { expect, test } from 'vitest';
import { innerSurface } from '../../src/model/read/capacity.ts';
import { rowCurves } from '../../src/model/read/rowCurve.ts';
import { pieces } from '../../src/model/read/smoothRow.ts';
import { surfaceTriangles } from '../../src/model/read/surface.ts';
import { volumeBelow } from '../../src/model/read/volume.ts';
import { settleBasket } from '../../src/model/settleBasket.ts';
import { baseOfKind } from '../../src/plan/baseOfKind.ts';
import { demos } from '../../src/plan/demo/demos.ts';
import { changeBase } from '../../src/plan/rescale.ts';

const library = await solids();
library.setup();
// They are there only after the set-up.
const { Manifold, Mesh } = library;

const first = demos[0].plan;
const cases = [
  ...demos.map(({ title, plan }) => ({ title, basket: settleBasket(plan) })),
  {
    title: 'The first demo on a board',
    basket: settleBasket(changeBase(first, baseOfKind('board', first.base))),
  },
];
type Basket = (typeof cases)[number]['basket'];

/** Volume under `level` of a surface closed by a fan over its last `ring` points, mm³. */
function solidVolume(
  points: readonly number[],
  triangles: readonly number[],
  ring: number,
  level: number,
) {
  const count = points.length / 3;
  const rim = Array.from({ length: ring }, (_, j) => count - ring + j);
  const middle = [0, 1, 2].map((d) =>
    rim.reduce((sum, p) => sum + (points[3 * p + d] ?? 0) / ring, 0),
  );
  const lid = rim.flatMap((p, j) => [count, p, rim[(j + 1) % ring] ?? 0]);
  const solid = Manifold.ofMesh(
    new Mesh({
      numProp: 3,
      vertProperties: Float32Array.from([...points, ...middle]),
      triVerts: Uint32Array.from([...triangles, ...lid]),
    }),
  );
  expect(solid.status()).toBe('NoError');
  return solid.trimByPlane([0, 0, -1], -level).volume();
}

/** The inner surface as read, by the chords between nodes. */
function byChords({ plan, net, positions, stakes }: Basket) {
  return innerSurface(plan, net, positions, stakes);
}

test.each(cases)('$title: the chords enclose what the solid library says', ({ basket }) => {
  const { points, triangles, level } = byChords(basket);
  const ours = volumeBelow(points, triangles, level);
  const ring = basket.net.ends.length;
  const theirs = solidVolume([...points], [...triangles], ring, level);
  expect(Math.abs(ours / theirs - 1)).toBeLessThan(1e-7);
});

function apart(points: ArrayLike<number>, a: number, b: number): number {
  const along = (d: number) => (points[3 * a + d] ?? 0) - (points[3 * b + d] ?? 0);
  return Math.hypot(along(0), along(1), along(2));
}

/** The inner surface with every row drawn as its curve, each segment in `pieces` pieces. */
function byCurves(basket: Basket) {
  const { net, positions } = basket;
  const { points: inner, level } = byChords(basket);
  const n = net.ends.length;
  const curves = rowCurves(net, positions);
  const low = net.baseNodeCount + (net.rows[0]?.nodes.length ?? 0);
  const points = [...inner.subarray(0, 3 * low)];
  const triangles: number[] = [];
  const own = surfaceTriangles(net);
  for (let t = 0; t < own.length; t += 3) {
    const corners = [...own.subarray(t, t + 3)];
    if (Math.max(...corners) < low) triangles.push(...corners);
  }
  // Rows 1 … R, and the top over the last of them, moved off its chords as that one is.
  for (let k = 1; k <= net.rows.length; k++) {
    const row = Math.min(k, net.rows.length - 1);
    const nodes = net.rows[row]?.nodes ?? [];
    const curve = curves[row - 1]?.points ?? [];
    const place = (e: number) => (k === row ? (nodes[e] ?? 0) : net.nodeCount + e);
    for (let j = 0; j < n; j++) {
      const f = (j + 1) % n;
      // The inner face's curve stands off its chord as much less as that is shorter.
      const share =
        apart(inner, place(j), place(f)) / apart(positions, nodes[j] ?? 0, nodes[f] ?? 0);
      for (let i = 0; i < pieces; i++) {
        for (let d = 0; d < 3; d++) {
          const between = (list: ArrayLike<number>, a: number, b: number) =>
            (1 - i / pieces) * (list[3 * a + d] ?? 0) + (i / pieces) * (list[3 * b + d] ?? 0);
          const chord = between(positions, nodes[j] ?? 0, nodes[f] ?? 0);
          const off = (curve[3 * (j * pieces + i) + d] ?? 0) - chord;
          points.push(between(inner, place(j), place(f)) + share * off);
        }
      }
    }
  }
  const ring = n * pieces;
  const at = (k: number, i: number) => low + (k - 1) * ring + (i % ring);
  for (let j = 0; j < n; j++) {
    const a = net.ends[j]?.nodes[0] ?? 0;
    const b = net.ends[(j + 1) % n]?.nodes[0] ?? 0;
    const half = a === b ? pieces : pieces / 2;
    for (let i = 0; i < pieces; i++) {
      const [q, r] = [at(1, j * pieces + i), at(1, j * pieces + i + 1)];
      triangles.push(i < half ? a : b, r, q);
    }
    if (a !== b) triangles.push(a, b, at(1, j * pieces + half));
  }
  for (let k = 1; k < net.rows.length; k++) {
    for (let i = 0; i < ring; i++) {
      const [a, b, c, d] = [at(k, i), at(k, i + 1), at(k + 1, i + 1), at(k + 1, i)];
      triangles.push(a, b, c, a, c, d);
    }
  }
  return { points, triangles, ring, level };
}

test.each(cases)('$title: its capacity is the solid’s to 0.1 %', ({ basket }) => {
  const { points, triangles, ring, level } = byCurves(basket);
  const theirs = solidVolume(points, triangles, ring, level);
  expect(Math.abs(basket.summary.capacity / theirs - 1)).toBeLessThan(1e-3);
});
