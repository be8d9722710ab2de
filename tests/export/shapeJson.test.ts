import { expect, test } from 'vitest';
import { shapeJson, shapeJsonText } from '../../src/export/shapeJson.ts';
import type { Finding } from '../../src/model/basket.ts';
import { settledDemo } from './settledDemo.ts';

const basket = settledDemo('in');
const shape = shapeJson(basket);

/** The keys that docs/design-file.md promises. */
const promised = {
  summary:
    'ends rows baseGirth height heightWithRim belly rim footHeight centreClearance capacity tipAngle wallArea weaverLength weight iterations worstGirthError worstStakeStretch',
  belly: 'row tapeGirth',
  rim: 'tapeGirth length width',
  row: 'row girth girthReached tapeGirth change changePerGap length width heightSide heightCorner lean gapLeast gapMost edgeStrain wall',
  stake: 'end side lengthNeeded tightestBend path',
  part: 'part count length section width',
};

test('holds every key that is promised', () => {
  const pairs: readonly (readonly [object | undefined, string])[] = [
    [shape.summary, promised.summary],
    [shape.summary.belly, promised.belly],
    [shape.summary.rim, promised.rim],
    [shape.rows[0], promised.row],
    [shape.stakes[0], promised.stake],
    [shape.cutList[0], promised.part],
  ];
  for (const [record, keys] of pairs) {
    expect(Object.keys(record ?? {})).toEqual(expect.arrayContaining(keys.split(' ')));
  }
  expect(shape.rows).toHaveLength(basket.summary.rows);
  expect(shape.stakes).toHaveLength(basket.summary.ends);
});

test('the text is JSON of the same record', () => {
  expect(JSON.parse(shapeJsonText(basket))).toEqual(JSON.parse(JSON.stringify(shape)));
  expect(shapeJsonText(basket)).not.toContain('null,null');
});

test('numbers are the basket’s own, to a ten-thousandth', () => {
  for (const [index, row] of shape.rows.entries()) {
    expect(row.tapeGirth).toBeCloseTo(basket.rows[index]?.tapeGirth ?? 0, 4);
  }
  for (const [index, { path }] of shape.stakes.entries()) {
    const [x, y, z] = basket.stakes[index]?.path.at(-1) ?? [0, 0, 0];
    expect(path.at(-1)).toEqual([x, y, z].map((value) => Math.round(value * 1e4) / 1e4 + 0));
  }
});

test('lengths in a finding are written in the plan’s unit', () => {
  const finding: Finding = {
    kind: 'rocks',
    severity: 'warn',
    row: null,
    rows: [],
    value: -3.17512,
    limit: 0,
    text: 'The middle hangs {mm:3.175} lower than the corners.',
  };
  const [written] = shapeJson({ ...basket, findings: [finding] }).findings;
  expect(written?.text).toBe('The middle hangs 1/8 in lower than the corners.');
  expect(written?.value).toBe(-3.1751);
});

test('refuses to write a number that is none', () => {
  const summary = { ...basket.summary, height: Number.NaN };
  expect(() => shapeJson({ ...basket, summary })).toThrow(/finite/);
});
