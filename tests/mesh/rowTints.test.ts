import { interpolateViridis } from 'd3-scale-chromatic';
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

test('the stops are those of d3-scale-chromatic’s viridis, and between them it is off by less than 2 %', () => {
  for (let at = 0; at <= 256; at += 1) {
    const theirs = rgb(interpolateViridis(at / 256));
    const place = (at / 256) * (viridis.length - 1);
    const low = Math.min(viridis.length - 2, Math.floor(place));
    const [from, to] = [viridis[low], viridis[low + 1]];
    [theirs.r, theirs.g, theirs.b].forEach((value, d) => {
      const ours = (from?.[d] ?? 0) + (place - low) * ((to?.[d] ?? 0) - (from?.[d] ?? 0));
      expect(Math.abs(ours - value)).toBeLessThan(place % 1 === 0 ? 1 : 5);
    });
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

/** Red, green and blue of a colour written as #rrggbb. */
function rgb(text: string) {
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) => Number.parseInt(text.slice(at, at + 2), 16));
  return { r, g, b };
}
