import { expect, test } from 'vitest';
import { stride } from '../../src/mesh/crossings.ts';
import { stakeStrands } from '../../src/mesh/stakeStrands.ts';
import { nodeNormals } from '../../src/mesh/surface.ts';
import { demoPlan, startBasket } from './demoBasket.ts';
import { pointOf } from './expectSound.ts';

const flatBase = startBasket(
  demoPlan((plan) => {
    plan.base.centreLift = 0;
  }),
);
const strands = stakeStrands(flatBase, nodeNormals(flatBase.net, flatBase.positions), 2);

test('the stakes of the base lie over and under each other in turn', () => {
  const heightAt = (stake: number, node: number) => {
    const [x, y] = pointOf(flatBase.positions, node);
    const { data, count } = strands[stake]?.path ?? { data: new Float64Array(), count: 0 };
    const off = (at: number) =>
      Math.hypot((data[at * stride] ?? 0) - x, (data[at * stride + 1] ?? 0) - y);
    const places = Array.from({ length: count }, (_, at) => at).sort((p, q) => off(p) - off(q));
    return data[(places[0] ?? 0) * stride + 2] ?? Number.NaN;
  };
  for (let i = 0; i < 5; i += 1) {
    for (let j = 0; j < 9; j += 1) {
      const node =
        flatBase.net.stakes[i]?.nodes[(flatBase.net.stakes[i]?.edge[0] ?? 0) + 1 + j] ?? -1;
      const rise = heightAt(i, node) - heightAt(5 + j, node);
      expect(Math.abs(rise)).toBeGreaterThan(0.9);
      expect(Math.sign(rise)).toBe((i + j) % 2 === 0 ? -1 : 1);
    }
  }
});

test('a split stake is drawn as one and a half: its second end begins in the first row', () => {
  const added = flatBase.net.stakes.findIndex(({ part }) => part === 'added');
  expect(added).toBe(14);
  expect(strands[added]?.path.count).toBe(32 + 1);
  expect(strands[added]?.closed).toBe(false);
});
