import { expect, test } from 'vitest';
import { wallBands } from '../../src/mesh/wallBands.ts';
import { demoPlan, startBasket } from './demoBasket.ts';

test('each row has its own triangles, round its own nodes', () => {
  const basket = startBasket(demoPlan());
  const { positions, indices, trianglesPerRow } = wallBands(basket);
  expect(trianglesPerRow).toBe(58);
  expect(indices.length).toBe(3 * 58 * 32);
  const node = basket.net.ends[0]?.nodes[10] ?? 0;
  const height = basket.positions[3 * node + 2] ?? 0;
  const row = Array.from(
    indices.slice(3 * 58 * 9, 3 * 58 * 10),
    (vertex) => positions[3 * vertex + 2] ?? 0,
  );
  expect(Math.min(...row)).toBeLessThan(height);
  expect(Math.max(...row)).toBeGreaterThan(height);
  expect(Math.max(...row) - Math.min(...row)).toBeLessThan(2 * 4.488);
});
