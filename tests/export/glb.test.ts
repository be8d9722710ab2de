import { WebIO } from '@gltf-transform/core';
import { validateBytes } from 'gltf-validator';
import { expect, test } from 'vitest';
import { glb } from '../../src/export/glb.ts';
import { basketStrands } from '../../src/mesh/basketStrands.ts';
import { settleBasket } from '../../src/model/settleBasket.ts';
import { demos } from '../../src/plan/demo/demos.ts';

const settled = demos.map(({ title, plan }) => ({ title, basket: settleBasket(plan) }));

test.each(settled)('the Khronos validator finds nothing wrong with $title', async ({ basket }) => {
  const { issues } = await validateBytes(await glb(basket));
  expect(issues.messages).toEqual([]);
  expect([issues.numErrors, issues.numWarnings]).toEqual([0, 0]);
});

test.each(settled)('$title keeps its size: metres, y up', async ({ basket }) => {
  const document = await new WebIO().readBinary(await glb(basket));
  const extent = (kind: RegExp) => {
    const [low, high] = [[9, 9, 9] as number[], [-9, -9, -9] as number[]];
    for (const mesh of document.getRoot().listMeshes()) {
      if (!kind.test(mesh.getName())) continue;
      const place = mesh.listPrimitives()[0]?.getAttribute('POSITION');
      place?.getMinNormalized([]).forEach((value, axis) => {
        low[axis] = Math.min(low[axis] ?? 0, value);
      });
      place?.getMaxNormalized([]).forEach((value, axis) => {
        high[axis] = Math.max(high[axis] ?? 0, value);
      });
    }
    return { low, size: high.map((value, axis) => value - (low[axis] ?? 0)) };
  };
  const { summary, rows } = basket;
  const most = (pick: (row: (typeof rows)[number]) => number) => Math.max(...rows.map(pick)) / 1000;
  const wall = extent(/^weaver /);
  expect(Math.abs((wall.size[0] ?? 0) - most(({ length }) => length))).toBeLessThan(0.006);
  expect(Math.abs((wall.size[2] ?? 0) - most(({ width }) => width))).toBeLessThan(0.006);
  const whole = extent(/stake|spoke|weaver/);
  expect(whole.low[1]).toBeGreaterThan(-0.004);
  expect(Math.abs((whole.size[1] ?? 0) - summary.height / 1000)).toBeLessThan(0.02);
});

test('every strand is a mesh with its own name', async () => {
  const first = settled[0];
  if (!first) throw new Error('no demo');
  const document = await new WebIO().readBinary(await glb(first.basket));
  const names = document
    .getRoot()
    .listMeshes()
    .map((mesh) => mesh.getName());
  expect(new Set(names).size).toBe(names.length);
  expect(names).toContain('lengthwise stake 1');
  expect(names).toContain('weaver of rows 1 to 20');
  const strands = Object.values(basketStrands(first.basket)).flat();
  expect(names).toEqual(expect.arrayContaining(strands.map(({ name }) => name)));
});
