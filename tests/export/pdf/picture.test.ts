import { expect, test } from 'vitest';
import { cameraFrom } from '../../../src/export/pdf/picture/camera.ts';
import { handlePiles } from '../../../src/export/pdf/picture/handlePiles.ts';
import { settleBasket } from '../../../src/model/settleBasket.ts';
import { demos } from '../../../src/plan/demo/demos.ts';

const camera = cameraFrom(32, 27);

/** Places of the painted pieces that lie aside of the bow's upright plane, east and west of it. */
function aside(plan: (typeof demos)[number]['plan']) {
  const half = 'bow' in plan.handle ? plan.handle.bow.width / 2 + 1 : 0;
  const places = handlePiles(settleBasket(plan), camera).map(({ place }) => place);
  return { all: places, ears: places.filter(([x]) => Math.abs(x) > half) };
}

test('the picture of a swing handle has an ear with two legs at either foot of its bow', () => {
  const plan = demos.map((one) => one.plan).find(({ handle }) => handle.kind === 'swing');
  if (!plan) throw new Error('a demo has a swing handle');
  const { ears } = aside(plan);
  const legs = new Set(ears.map(([x, y]) => `${Math.sign(x)} ${Math.sign(y)}`));
  expect([...legs].sort()).toEqual(['-1 -1', '-1 1', '1 -1', '1 1']);
});

test('the picture of a fixed handle has a bow without ears, and that of none has nothing', () => {
  for (const { plan } of demos) {
    if (plan.handle.kind === 'swing') continue;
    const { all, ears } = aside(plan);
    expect(ears).toEqual([]);
    expect(all.length > 0).toBe(plan.handle.kind === 'fixed');
  }
});
