import { expect, test } from 'vitest';
import { flatRowsOff } from '../../../src/model/finding/flatRowsOff.ts';
import { netOf, readingOf, squarePlan } from '../readings.ts';

const stake = { section: 'flat', width: 6, thickness: 1 } as const;
const plan = squarePlan({
  base: {
    kind: 'wheel',
    spokes: 12,
    stake,
    hub: 20,
    diameter: 130,
    upsett: 'rolled',
    centreLift: 0,
  },
});
const net = netOf(plan);
const spread = (share: number) =>
  net.start.map((value, i) => (i % 3 === 2 ? value : value * share));

test('flat rows that are as long as planned are passed over', () => {
  expect(flatRowsOff({ ...readingOf(plan), positions: spread(1.009) })).toEqual([]);
});

test('a base whose flat rows would have to be 2 % longer is warned of', () => {
  const [finding, ...others] = flatRowsOff({ ...readingOf(plan), positions: spread(1.02) });
  expect(others).toEqual([]);
  expect(finding).toMatchObject({ kind: 'flat-rows-off', severity: 'warn', row: null });
  expect(finding?.value).toBeCloseTo(0.02, 3);
  expect(finding?.text).toContain('longer');
});

test('a mat has no rows woven flat', () => {
  expect(flatRowsOff(readingOf(squarePlan()))).toEqual([]);
});
