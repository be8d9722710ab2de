import { expect, test } from 'vitest';
import { stakeStretched } from '../../../src/model/finding/stakeStretched.ts';
import { netOf, place, readingOf, squarePlan } from '../readings.ts';

const plan = squarePlan();
const net = netOf(plan);
const reading = readingOf(plan);

/** Every stake at its length: the base flat, the wall straight up, `gain(row)` times a row's step. */
function upright(gain: (row: number) => number): Float64Array {
  const shape = Float64Array.from(net.start, (value, i) => (i % 3 === 2 ? 0 : value));
  for (const { nodes } of net.ends) {
    const [x, y] = place(net.start, nodes[0] ?? 0);
    let z = 0;
    for (let row = 1; row < nodes.length; row++) {
      z += gain(row) * (row === 1 ? 2.5 : 5);
      shape.set([x, y, z], 3 * (nodes[row] ?? 0));
    }
  }
  return shape;
}

test('stakes at their length are passed over', () => {
  expect(stakeStretched({ ...reading, positions: upright(() => 1.004) })).toEqual([]);
});

test('a stretch of stake off by more than 0.5 % is named by its rows', () => {
  const positions = upright((row) => (row === 6 || row === 7 ? 0.99 : 1));
  const [finding, ...others] = stakeStretched({ ...reading, positions });
  expect(others).toEqual([]);
  expect(finding).toMatchObject({ kind: 'stake-stretched', severity: 'warn' });
  expect(finding?.rows).toEqual([6, 7]);
  expect(finding?.value).toBeCloseTo(-0.01, 9);
});

test('a stake that is off in the base is named by the base', () => {
  const positions = upright(() => 1).map((value, i) =>
    i < 3 * net.baseNodeCount && i % 3 === 0 ? 1.05 * value : value,
  );
  const [finding] = stakeStretched({ ...reading, positions });
  expect(finding).toMatchObject({ row: null, rows: [] });
  expect(finding?.text).toMatch(/^The base:/);
});
