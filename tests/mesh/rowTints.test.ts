import { expect, test } from 'vitest';
import { basketMesh } from '../../src/mesh/basketMesh.ts';
import { rowTints, tinted, viridis } from '../../src/mesh/rowTints.ts';
import { settleBasket } from '../../src/model/settleBasket.ts';
import { demos } from '../../src/plan/demo/demos.ts';

const basket = settleBasket(demos[0].plan);

test('the row that leans least is darkest, the one that leans most is lightest', () => {
  const { colours, least, most } = rowTints(basket.rows, 'lean');
  const at = (row: number) => [...colours.subarray(3 * row, 3 * row + 3)];
  for (const { row, lean } of basket.rows) {
    if (lean === least) expect(at(row)).toEqual(viridis[0]);
    if (lean === most) expect(at(row)).toEqual(viridis.at(-1));
  }
});

test('viridis gets lighter from stop to stop', () => {
  const lightness = viridis.map(([r, g, b]) => 0.2126 * r + 0.7152 * g + 0.0722 * b);
  expect(lightness.every((value, at) => at === 0 || value > (lightness[at - 1] ?? 0))).toBe(true);
});

test('a tinted mesh keeps its shape', () => {
  const { weavers } = basketMesh(basket);
  const other = tinted(weavers, rowTints(basket.rows, 'gap'));
  expect(other.positions).toBe(weavers.positions);
  expect(other.colour).not.toEqual(weavers.colour);
});
