import { expect, test } from 'vitest';
import { basketMesh } from '../../src/mesh/basketMesh.ts';
import { outline } from '../../src/mesh/outline.ts';
import { settleBasket } from '../../src/model/settleBasket.ts';
import { demos } from '../../src/plan/demo/demos.ts';
import { expectSound } from './expectSound.ts';

test.each(demos)('the settled $title is a sound mesh and a finite drawing', ({ plan }) => {
  const basket = settleBasket(plan);
  const mesh = basketMesh(basket);
  expectSound(mesh.stakes, 0.002);
  expectSound(mesh.weavers, 0.005);
  expectSound(mesh.fittings, 0.005);
  expect(outline(basket, 'side').silhouette.every(Number.isFinite)).toBe(true);
  expect(outline(basket, 'end').silhouette.every(Number.isFinite)).toBe(true);
});
