import { expect, test } from 'vitest';
import { handleNotHeld } from '../../../src/model/finding/handleNotHeld.ts';
import { netOf, readingOf, revolved, squarePlan } from '../readings.ts';

const handle = {
  kind: 'fixed',
  across: 'width',
  spread: 140,
  rise: 100,
  bow: { width: 10, thickness: 3 },
  wrap: { width: 4 },
} as const;
const plan = squarePlan({ handle });
const net = netOf(plan);

/** A wall whose held stakes stand as far apart as planned, and `more(row)` mm beyond. */
function held(more: (row: number) => number): Float64Array {
  const shape = revolved(
    net,
    () => 70,
    (row) => 5 * row,
  );
  const { nodes, length } = net.heldWidths;
  length.forEach((apart, i) => {
    const half = (apart + more(i + 1)) / 2;
    for (const [node, y] of [
      [nodes[2 * i] ?? 0, -half],
      [nodes[2 * i + 1] ?? 0, half],
    ] as const) {
      shape[3 * node] = 0;
      shape[3 * node + 1] = y;
    }
  });
  return shape;
}

test('legs that stand as far apart as planned are passed over', () => {
  expect(handleNotHeld({ ...readingOf(plan), positions: held(() => 0.4) })).toEqual([]);
});

test('rows where the legs stand too far apart are named, with the way out', () => {
  const off = held(
    (row) =>
      new Map([
        [7, 2],
        [8, 3],
      ]).get(row) ?? 0,
  );
  const [finding, ...others] = handleNotHeld({ ...readingOf(plan), positions: off });
  expect(others).toEqual([]);
  expect(finding).toMatchObject({
    kind: 'handle-not-held',
    severity: 'warn',
    row: 8,
    rows: [7, 8],
  });
  expect(finding?.text).toContain('{mm:3} too far apart');
  expect(finding?.text).toContain('Plan the handle wider');
});

test('a basket without a fixed handle is passed over', () => {
  expect(handleNotHeld(readingOf(squarePlan()))).toEqual([]);
});
