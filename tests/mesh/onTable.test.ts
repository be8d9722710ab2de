import { expect, test } from 'vitest';
import { basketMesh } from '../../src/mesh/basketMesh.ts';
import { settleBasket } from '../../src/model/settleBasket.ts';
import { demos } from '../../src/plan/demo/demos.ts';

test.each(demos)('the drawn $title stands on its table, with nothing under it', ({ plan }) => {
  const { stakes, weavers, fittings } = basketMesh(settleBasket(plan));
  let lowest = Number.POSITIVE_INFINITY;
  for (const { positions } of [stakes, weavers, fittings]) {
    for (let at = 2; at < positions.length; at += 3) {
      lowest = Math.min(lowest, positions[at] ?? Number.NaN);
    }
  }
  expect(lowest).toBeGreaterThan(-0.05);
  expect(lowest).toBeLessThan(0.8);
});
