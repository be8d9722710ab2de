import { PerspectiveCamera, Vector3 } from 'three';
import { expect, test } from 'vitest';
import { distance, extent } from '../../src/scene/frameBasket.ts';
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
