import { expect, test } from 'vitest';
import { countOfEnds } from '../../../src/model/finding/countOfEnds.ts';
import type { PlanDocument } from '../../../src/plan/schema.ts';
import { readingOf, squareBase, squarePlan } from '../readings.ts';

type Weave = NonNullable<PlanDocument['bands']>[number]['weave'];
const weaver = { section: 'flat', width: 5, thickness: 1.5 } as const;

/** What is said of twenty rows of `weave` on 28 ends, or on 29 with one stake split. */
function said(weave: Weave, odd: boolean) {
  const oddEnd = { kind: odd ? 'split' : 'none', at: 'middle of a long side' } as const;
  return countOfEnds(readingOf(squarePlan({ bands: [{ rows: 20, weave, weaver }], oddEnd })));
}

test.each([
  ['continuous', false],
  ['rounds', true],
  ['chased', true],
  ['twill', false],
] as const)('%s on a count it does not go with (odd: %s) cannot be woven', (weave, odd) => {
  const [finding] = said(weave, odd);
  expect(finding).toMatchObject({ kind: 'count-of-ends', severity: 'stop', row: 1 });
  expect(finding?.value).toBe(odd ? 29 : 28);
});

test.each([
  ['continuous', true],
  ['rounds', false],
  ['chased', false],
  ['twined', true],
  ['twined', false],
] as const)('%s goes with its count of ends (odd: %s)', (weave, odd) => {
  expect(said(weave, odd)).toEqual([]);
});

test.each([
  [7, 'one left over', 'against the way'],
  [8, 'three left over', 'along with the way'],
] as const)(
  'a twill on an odd count tells which way its diagonal climbs (%i lengthwise)',
  (lengthwise, over, way) => {
    const plan = squareBase({ lengthwise });
    const band = { rows: 20, weave: 'twill', weaver, packing: 1, colour: 'natural' } as const;
    const oddEnd = { kind: 'split', at: 'middle of a long side' } as const;
    const [finding, ...others] = countOfEnds(readingOf({ ...plan, oddEnd, bands: [band] }));
    expect(others).toEqual([]);
    expect(finding).toMatchObject({ kind: 'twill-step', severity: 'note' });
    expect(finding?.text).toContain(over);
    expect(finding?.text).toContain(way);
  },
);

test('a twill on two ends more than fours shows no diagonal, and is warned of', () => {
  const plan = { ...squareBase({ lengthwise: 8 }) };
  const band = { rows: 20, weave: 'twill', weaver, packing: 1, colour: 'natural' } as const;
  expect(countOfEnds(readingOf({ ...plan, bands: [band] }))).toMatchObject([
    { severity: 'warn', value: 30 },
  ]);
});

test('only the rows of the band that does not go are named', () => {
  const bands = [
    { rows: 3, weave: 'rounds', weaver },
    { rows: 4, weave: 'continuous', weaver },
    { rows: 13, weave: 'twined', weaver },
  ] as const;
  const [finding, ...others] = countOfEnds(readingOf(squarePlan({ bands })));
  expect(others).toEqual([]);
  expect(finding?.rows).toEqual([4, 5, 6, 7]);
  expect(finding?.text).toContain('Rows 4 to 7');
});

test('bands that follow one another in one weave are one finding', () => {
  const band = { rows: 10, weave: 'continuous', weaver } as const;
  const found = countOfEnds(
    readingOf(squarePlan({ bands: [band, { ...band, colour: 'walnut' }] })),
  );
  expect(found).toHaveLength(1);
  expect(found[0]?.rows).toHaveLength(20);
});
