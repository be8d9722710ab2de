import { PerspectiveCamera, Vector3 } from 'three';
import { expect, test } from 'vitest';
import { distance, extent, isWellFramed, leastShareOf } from '../../src/scene/frameBasket.ts';
import { stand } from '../../src/scene/stageView.ts';
import { demoPlan, startBasket } from '../mesh/demoBasket.ts';

const basket = startBasket(demoPlan());
const views = ['quarter', 'side', 'end', 'top', 'underside'] as const;

test.each(views)('all of the basket is in the picture from the %s', (view) => {
  for (const aspect of [0.6, 1, 2]) {
    const size = extent(basket);
    const { turn, rise } = stand[view];
    const away = distance(size, turn, rise, { angle: Math.PI / 6, aspect });
    const middle = new Vector3(...size.middle);
    const camera = new PerspectiveCamera(30, aspect, 0.1, 1000);
    camera.position.setFromSphericalCoords(away, Math.PI / 2 - rise, turn).add(middle);
    camera.lookAt(middle);
    camera.updateMatrixWorld();
    const seen = Array.from({ length: basket.positions.length / 3 }, (_, node) => {
      const [x = 0, y = 0, z = 0] = basket.positions.subarray(3 * node, 3 * node + 3);
      return new Vector3(x / 10, z / 10, -y / 10).project(camera);
    });
    const most = Math.max(...seen.map(({ x, y }) => Math.max(Math.abs(x), Math.abs(y))));
    expect(most).toBeLessThan(0.95);
    expect(most).toBeGreaterThan(0.6);
  }
});

test.each(views)(
  'under buttons over its upper edge, all of the basket is in the rest of the picture from the %s',
  (view) => {
    const size = extent(basket);
    const { turn, rise } = stand[view];
    const [high, top, bottom] = [508, 84, 26];
    const free = 1 - (top + bottom) / high;
    const away = distance(size, turn, rise, { angle: Math.PI / 6, aspect: 1.4, free });
    const middle = new Vector3(...size.middle);
    const camera = new PerspectiveCamera(30, 1.4, 0.1, 1000);
    camera.position.setFromSphericalCoords(away, Math.PI / 2 - rise, turn).add(middle);
    camera.lookAt(middle);
    camera.setViewOffset(1.4 * high, high, 0, (bottom - top) / 2, 1.4 * high, high);
    camera.updateMatrixWorld();
    const ys = Array.from({ length: basket.positions.length / 3 }, (_, node) => {
      const [x = 0, y = 0, z = 0] = basket.positions.subarray(3 * node, 3 * node + 3);
      return (high * (1 - new Vector3(x / 10, z / 10, -y / 10).project(camera).y)) / 2;
    });
    expect(Math.min(...ys)).toBeGreaterThan(top);
    expect(Math.max(...ys)).toBeLessThan(high - bottom);
  },
);

const lens = { angle: Math.PI / 6, aspect: 1.4, free: 0.8 };

test('stakes that stand on over the rows woven are framed too', () => {
  const tip = Float32Array.of(0, 0, 900);
  const top = (size: ReturnType<typeof extent>) => size.middle[1] + size.half[1];
  expect(10 * top(extent(basket, [tip]))).toBeCloseTo(900, 6);
  expect(10 * top(extent(basket))).toBeLessThan(900);
});

/** The basket made `times` as large, standing on the table as before. */
const grown = (times: number) => extent({ positions: basket.positions.map((at) => times * at) });

test.each(views)('from the %s a basket is well framed until it outgrows the picture', (view) => {
  const size = extent(basket);
  const eye = { middle: size.middle, away: distance(size, ...angles(view), lens), ...stand[view] };
  expect(isWellFramed(size, eye, lens)).toBe(true);
  expect(isWellFramed(grown(0.6), eye, lens)).toBe(true);
  expect(isWellFramed(grown(1.6), eye, lens)).toBe(false);
  expect(isWellFramed(grown(0.25), eye, lens)).toBe(false);
});

test('a basket that the eye stands in, or that lies beside the picture, is not well framed', () => {
  const size = extent(basket);
  const away = distance(size, ...angles('side'), lens);
  const eye = { middle: size.middle, away, ...stand.side };
  expect(isWellFramed(grown(20), eye, lens)).toBe(false);
  expect(isWellFramed(size, { ...eye, middle: [away, 0, 0] }, lens)).toBe(false);
});

test('a step of its weaving that has become half as large is looked at anew', () => {
  const size = extent(basket);
  const eye = { middle: size.middle, away: distance(size, ...angles('side'), lens), ...stand.side };
  expect(isWellFramed(size, eye, lens, leastShareOf.part)).toBe(true);
  expect(isWellFramed(grown(0.5), eye, lens)).toBe(true);
  expect(isWellFramed(grown(0.5), eye, lens, leastShareOf.part)).toBe(false);
});

function angles(view: (typeof views)[number]): [turn: number, rise: number] {
  return [stand[view].turn, stand[view].rise];
}
