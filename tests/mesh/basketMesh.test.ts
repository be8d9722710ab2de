import { expect, test } from 'vitest';
import { basketMesh } from '../../src/mesh/basketMesh.ts';
import { bandPlan, demoPlan, startBasket } from './demoBasket.ts';
import { expectSound } from './expectSound.ts';

/** In the start shape the stakes turn up at a right angle within a row: they fold there. */
const folded = 0.01;

const weaves = ['continuous', 'rounds', 'twined', 'chased', 'twill'] as const;
const sections = ['flat', 'flat-oval', 'half-round', 'round'] as const;

test.each(weaves)('a basket of %s rows is a sound mesh', (weave) => {
  const mesh = basketMesh(startBasket(bandPlan({ weave })));
  expectSound(mesh.stakes, folded);
  expectSound(mesh.weavers, folded);
});

test.each(sections)('a basket of %s weavers is a sound mesh', (section) => {
  const weaver = { section, width: 4, thickness: section === 'round' ? 4 : 1.5 };
  const mesh = basketMesh(startBasket(bandPlan({ weaver })));
  expectSound(mesh.weavers, folded);
});

test('vertices name their stake and their row', () => {
  const basket = startBasket(demoPlan());
  const mesh = basketMesh(basket);
  expect(new Set(mesh.stakes.strand)).toEqual(new Set(basket.net.stakes.keys()));
  expect(new Set(mesh.weavers.strand)).toEqual(
    new Set(Array.from({ length: 32 }, (_, at) => at + 1)),
  );
});

test('rows follow each other in the order of the vertices', () => {
  const { strand } = basketMesh(startBasket(bandPlan({ weave: 'rounds' }))).weavers;
  expect(strand.every((row, at) => at === 0 || row >= (strand[at - 1] ?? 0))).toBe(true);
});

test('a basket twice the size is a mesh twice the size', () => {
  const plan = demoPlan();
  const twice = demoPlan((copy) => {
    copy.base.stake = { section: 'flat', width: 25.4, thickness: 2 };
    copy.base.gap = 12.7;
    copy.base.centreLift = 30;
    Object.assign(copy.bands[0] ?? {}, {
      weaver: { section: 'flat-oval', width: 8.8, thickness: 3.2 },
    });
    copy.girthLine.points = copy.girthLine.points.map(({ row, girth }) => ({
      row,
      girth: 2 * girth,
    }));
  });
  // without its rim, whose strands are as thick as ever
  const one = basketMesh(startBasket(plan), { standing: 10 });
  const two = basketMesh(
    { ...startBasket(twice), positions: startBasket(plan, 2).positions },
    { standing: 20 },
  );
  for (const part of ['stakes', 'weavers'] as const) {
    expect(two[part].indices).toEqual(one[part].indices);
    const most = one[part].positions.reduce(
      (worst, value, at) => Math.max(worst, Math.abs(2 * value - (two[part].positions[at] ?? 0))),
      0,
    );
    expect(most).toBeLessThan(1e-3);
  }
});

test('a net drawn together to a point still gives numbers', () => {
  const basket = startBasket(demoPlan());
  const mesh = basketMesh({ ...basket, positions: new Float64Array(basket.positions.length) });
  for (const { positions, normals } of [mesh.stakes, mesh.weavers]) {
    expect(positions.every(Number.isFinite)).toBe(true);
    expect(normals.every(Number.isFinite)).toBe(true);
  }
});

test('stakes stand over the last row, by less than a row and a half', () => {
  const basket = startBasket(demoPlan());
  const { positions } = basketMesh(basket).stakes;
  const rim = Math.max(...heights(basket.positions));
  const top = Math.max(...heights(positions));
  expect(top - rim).toBeGreaterThan(0.5 * 4.488);
  expect(top - rim).toBeLessThan(1.5 * 4.488);
});

test('the same basket gives the same colours', () => {
  const basket = startBasket(demoPlan());
  expect(basketMesh(basket).weavers.colour).toEqual(basketMesh(basket).weavers.colour);
});

test('a dyed band has its own colour', () => {
  const { colour } = basketMesh(startBasket(bandPlan({ colour: '#0000ff' }))).weavers;
  expect(colour.every((value, at) => at % 3 === 2 || value === 0)).toBe(true);
});

test('a closed row leads back to its beginning', () => {
  const { indices, strand } = basketMesh(startBasket(bandPlan({ weave: 'rounds' }))).weavers;
  const edges = new Map<string, number>();
  for (let at = 0; at < indices.length; at += 3) {
    if (strand[indices[at] ?? 0] !== 7) continue;
    for (const [from, to] of [
      [0, 1],
      [1, 2],
      [2, 0],
    ] as const) {
      const ends = [indices[at + from] ?? 0, indices[at + to] ?? 0].sort((a, b) => a - b);
      edges.set(ends.join(), (edges.get(ends.join()) ?? 0) + 1);
    }
  }
  expect(edges.size).toBeGreaterThan(100);
  expect([...edges.values()].every((count) => count === 2)).toBe(true);
});

function heights(values: Float32Array | Float64Array): number[] {
  return Array.from(values).filter((_, at) => at % 3 === 2);
}
