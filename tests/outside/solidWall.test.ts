/**
 * The wall as it leaves for a mould, held to a general-purpose solid library (manifold-3d): read back
 * from its STL, it is one closed solid, of the volume that area and thickness give.
 */
import solids from 'manifold-3d';
import { expect, test } from 'vitest';
import { stl } from '../../src/export/stl.ts';
import { wallSkin, wallSolid } from '../../src/mesh/solid/wallSolid.ts';
import { settleBasket } from '../../src/model/settleBasket.ts';
import { baseOfKind } from '../../src/plan/baseOfKind.ts';
import { demos } from '../../src/plan/demo/demos.ts';
import { changeBase } from '../../src/plan/rescale.ts';

const library = await solids();
library.setup();
const { Manifold, Mesh } = library;

const first = demos[0].plan;
const cases = [
  ...demos.map(({ title, plan }) => ({ title, basket: settleBasket(plan) })),
  {
    title: 'The first demo on a board',
    basket: settleBasket(changeBase(first, baseOfKind('board', first.base))),
  },
];

test.each(cases)('$title: the STL is one closed solid of the wall’s thickness', ({ basket }) => {
  const { points, triangles } = welded(stl(wallSolid(basket)));
  const solid = Manifold.ofMesh(
    new Mesh({ numProp: 3, vertProperties: points, triVerts: triangles }),
  );
  expect(solid.status()).toBe('NoError');
  // a bowl has no hole through it, and it is one piece
  expect(solid.genus()).toBe(0);
  expect(solid.decompose().length).toBe(1);
  const { area, volume } = skinOf(basket);
  expect(Math.abs(solid.volume() / volume - 1)).toBeLessThan(0.005);
  // The skin runs through the middle of base and wall, and is no smaller than the wall as read off.
  expect(area).toBeGreaterThan(basket.summary.wallArea);
  const { min, max } = solid.boundingBox();
  expect(min[2]).toBeCloseTo(0, 3);
  expect(max[2] ?? 0).toBeGreaterThan(0.97 * basket.summary.height);
});

/** Area of the middle surface, and what it holds at twice the half thickness. */
function skinOf(basket: (typeof cases)[number]['basket']) {
  const { points, half, triangles } = wallSkin(basket);
  let [area, volume] = [0, 0];
  for (let at = 0; at < triangles.length; at += 3) {
    const corners = [...triangles.subarray(at, at + 3)];
    const [a, b, c] = corners.map((point) => points.subarray(3 * point, 3 * point + 3));
    const side = (to: Float64Array | undefined, d: number) => (to?.[d] ?? 0) - (a?.[d] ?? 0);
    const [u, v] = [b, c].map((to) => [0, 1, 2].map((d) => side(to, d)));
    const cross = [0, 1, 2].map(
      (d) =>
        (u?.[(d + 1) % 3] ?? 0) * (v?.[(d + 2) % 3] ?? 0) -
        (u?.[(d + 2) % 3] ?? 0) * (v?.[(d + 1) % 3] ?? 0),
    );
    const own = Math.hypot(...cross) / 2;
    area += own;
    volume += (2 * own * corners.reduce((sum, point) => sum + (half[point] ?? 0), 0)) / 3;
  }
  return { area, volume };
}

/** The triangles of an STL, corners at the very same place made one. */
function welded(file: Uint8Array<ArrayBuffer>) {
  const view = new DataView(file.buffer);
  const count = view.getUint32(80, true);
  const byPlace = new Map<string, number>();
  const points: number[] = [];
  const triangles = new Uint32Array(3 * count);
  for (let corner = 0; corner < 3 * count; corner += 1) {
    const from = 84 + 50 * Math.floor(corner / 3) + 12 + 12 * (corner % 3);
    const place = [0, 4, 8].map((at) => view.getFloat32(from + at, true));
    const key = place.join();
    const known = byPlace.get(key) ?? points.length / 3;
    if (!byPlace.has(key)) {
      byPlace.set(key, known);
      points.push(...place);
    }
    triangles[corner] = known;
  }
  return { points: Float32Array.from(points), triangles };
}
