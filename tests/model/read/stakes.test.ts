import { expect, test } from 'vitest';
import { readBasket } from '../../../src/model/read/readBasket.ts';
import type { PlanDocument } from '../../../src/plan/schema.ts';
import { planOf, tradeOblong } from '../../plan/plans.ts';
import { calm, netOf, place, readingOf, revolved, squareBase, squarePlan } from '../readings.ts';

/** The oblong plan of the trade, packed tight and with 2 3/4 in to tuck. */
const trade = planOf({
  ...tradeOblong,
  bands: [{ ...tradeOblong.bands[0], packing: 1 }],
  allowances: { tuck: 2.75 * 25.4, splice: 4, taper: 250, waste: 0.1, usableStrand: 2400 },
} satisfies PlanDocument);
const reading = readingOf(trade);

test('the oblong plan of the trade needs lengthwise stakes of 23 in and crosswise ones of 20 in', () => {
  const inches = (part: string) =>
    (reading.cutList.find((own) => own.part.startsWith(part))?.length ?? 0) / 25.4;
  expect(inches('lengthwise')).toBeCloseTo(23, 6);
  expect(inches('crosswise')).toBeCloseTo(20, 6);
});

test('the oblong plan of the trade takes 5 lengthwise and 9 crosswise stakes, one of them split', () => {
  expect(reading.cutList.map(({ part, count }) => [part, count])).toEqual([
    ['lengthwise stake', 5],
    ['crosswise stake', 8],
    ['crosswise stake, split at one end', 1],
  ]);
});

test('the oblong plan of the trade has a base of 6 1/2 by 3 1/2 in, 29 ends and 5 1/2 in of wall', () => {
  const { baseLength, baseWidth, baseGirth, ends } = reading.summary;
  expect(baseLength / 25.4).toBeCloseTo(6.5, 9);
  expect(baseWidth / 25.4).toBeCloseTo(3.5, 9);
  expect(baseGirth / 25.4).toBeCloseTo(20, 9);
  expect(ends).toBe(29);
  expect((reading.rows.at(-1)?.wall ?? 0) / 25.4).toBeCloseTo(5.5, 9);
});

test('both cuts of the trade leave the same 8 1/4 in beyond the base at each end', () => {
  for (const { side, lengthNeeded } of reading.stakes) {
    const base = side === 'east' || side === 'west' ? 6.5 : 3.5;
    expect(lengthNeeded / 25.4 - base / 2).toBeCloseTo(8.25, 9);
  }
});

test('an added stake runs from the middle of the base up one side', () => {
  const added = readingOf(squarePlan({ oddEnd: { kind: 'added', at: 'middle of a long side' } }));
  expect(added.cutList.at(-1)).toMatchObject({
    part: 'added stake',
    count: 1,
    length: 50 + 100 + 70,
  });
});

test('a path has a point for the base’s edge, for every row, and for the top of the wall', () => {
  const { stakes, net, positions } = readingOf(squarePlan());
  const end = net.ends[5];
  const path = stakes[5]?.path ?? [];
  expect(path).toHaveLength(22);
  expect(path[0]).toEqual(place(positions, end?.nodes[0] ?? 0));
  expect(path[20]).toEqual(place(positions, end?.nodes[20] ?? 0));
});

test('the path goes on for half a pitch above the last row', () => {
  for (const { path } of readingOf(squarePlan()).stakes) {
    const [x, y, z] = path.at(-2) ?? [0, 0, 0];
    const [u, v, w] = path.at(-1) ?? [0, 0, 0];
    expect(Math.hypot(u - x, v - y, w - z)).toBeCloseTo(2.5, 9);
  }
});

/** A wall that is a quarter of a round ring of radius 60 standing on the rim of a flat base. */
function ringed(kind: 'rolled' | 'creased') {
  const plan = squareBase({ upsett: kind });
  const net = netOf(plan);
  const angle = (row: number) => Math.max(0, (row - 0.5) * 5) / 60;
  const shape = revolved(
    net,
    (row) => 70 + 60 * Math.sin(angle(row)),
    (row) => 60 * (1 - Math.cos(angle(row))),
  );
  return readBasket(plan, net, shape, calm(net));
}

test('a stake bent to a circle has that radius', () => {
  // From the edge the wall runs out level, so the middle of each side has no fold at the edge.
  const [, , , middle] = ringed('creased').stakes;
  expect(middle?.tightestBend).toBeGreaterThan(55);
  expect(middle?.tightestBend).toBeLessThan(61);
});

test('the fold of a creased upsett is not a bend, the roll of a rolled one is', () => {
  const folded = (kind: 'rolled' | 'creased') => {
    const plan = squareBase({ upsett: kind });
    const net = netOf(plan);
    const upright = revolved(
      net,
      () => 70,
      (row) => Math.max(0, 5 * row - 2.5),
    );
    return readBasket(plan, net, upright, calm(net)).stakes[3]?.tightestBend ?? 0;
  };
  expect(folded('creased')).toBeGreaterThan(100);
  // A right angle spread over the edge and a node on each side of it.
  expect(folded('rolled')).toBeLessThan(30);
});
