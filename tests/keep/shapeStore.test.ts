import 'fake-indexeddb/auto';
import { isDeepStrictEqual } from 'node:util';
import { IDBFactory } from 'fake-indexeddb';
import { beforeEach, expect, test } from 'vitest';
import type { KeptShape } from '../../src/keep/shapeStore.ts';
import { shapeStore } from '../../src/keep/shapeStore.ts';
import { basketMesh } from '../../src/mesh/basketMesh.ts';
import { settleBasket } from '../../src/model/settleBasket.ts';
import { demos } from '../../src/plan/demo/demos.ts';
import type { Plan } from '../../src/plan/schema.ts';

const { plan } = demos[0];
const wider = (girth: number): Plan => ({
  ...plan,
  girthLine: {
    ...plan.girthLine,
    points: plan.girthLine.points.map((point) => ({ ...point, girth: point.girth + girth })),
  },
});
const shape = shapeOf(plan);

function shapeOf(of: Plan): KeptShape {
  const { plan: _, ...basket } = settleBasket(of);
  return { basket, mesh: basketMesh({ ...basket, plan: of }), milliseconds: 7 };
}

beforeEach(() => {
  globalThis.indexedDB = new IDBFactory();
});

test('a shape that was kept is found by the next page, number for number', async () => {
  await shapeStore('one').keep(plan, shape);
  const found = await shapeStore('one').find(plan);
  expect(isDeepStrictEqual(found?.basket, shape.basket)).toBe(true);
  expect(isDeepStrictEqual(found?.mesh, shape.mesh)).toBe(true);
});

test('a plan of another name and unit has the same shape, one of another girth has not', async () => {
  const shapes = shapeStore('one');
  await shapes.keep(plan, shape);
  const renamed: Plan = { ...plan, name: 'Pears', notes: 'soak long', display: { unit: 'cm' } };
  expect(await shapes.find(renamed)).not.toBeNull();
  expect(await shapes.find(wider(1))).toBeNull();
});

test('what another build has made is not found', async () => {
  await shapeStore('one').keep(plan, shape);
  expect(await shapeStore('two').find(plan)).toBeNull();
});

test('the last three shapes are kept', async () => {
  const shapes = shapeStore('one');
  for (const girth of [1, 2, 3, 4]) {
    await shapes.keep(wider(girth), shape);
    // the clock that tells old from new counts in ms
    await new Promise((resolve) => setTimeout(resolve, 3));
  }
  const found = await Promise.all([1, 2, 3, 4].map((girth) => shapes.find(wider(girth))));
  expect(found.map((one) => one !== null)).toEqual([false, true, true, true]);
});

test('the words of a plan are not kept with its shape', async () => {
  const shapes = shapeStore('one');
  await shapes.keep({ ...plan, notes: 'for Wednesday only' }, shape);
  const found = await shapes.find(plan);
  expect(JSON.stringify(found)).not.toContain('Wednesday');
  expect(found?.basket).not.toHaveProperty('plan');
});

test('a browser without a database finds nothing and keeps nothing', async () => {
  globalThis.indexedDB = undefined as unknown as IDBFactory;
  const shapes = shapeStore('one');
  await shapes.keep(plan, shape);
  await shapes.clear();
  expect(await shapes.find(plan)).toBeNull();
});

test('shapes that were let go for want of room are not found, and none takes the room again', async () => {
  const shapes = shapeStore('one');
  await shapes.keep(plan, shape);
  await shapes.clear();
  await shapes.keep(plan, shape);
  expect(await shapes.find(plan)).toBeNull();
});
