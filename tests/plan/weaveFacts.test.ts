import { expect, test } from 'vitest';
import { weaves } from '../../src/plan/bands.ts';
import {
  countFit,
  tightPitch,
  turnLength,
  twillStep,
  weaveFacts,
} from '../../src/plan/weaveFacts.ts';

const flat = { section: 'flat', width: 6, thickness: 1 } as const;

/**
 * Whether the weaver lies outside stake `end` in round `row`, stroke by stroke: `over` strokes out and as
 * many in, with the strokes counted on from round to round.
 */
const isOut = (over: 1 | 2, ends: number, row: number, end: number) =>
  (row * ends + end) % (2 * over) < over;

const columns = Array.from({ length: 12 }, (_, end) => end + 100);
const same = (over: 1 | 2, ends: number, step: number) =>
  columns.every((end) => isOut(over, ends, 8, end) === isOut(over, ends, 7, end + step));

test('one weaver repeats its row where the count of ends is even, and only there', () => {
  for (let ends = 9; ends < 41; ends++) {
    expect(countFit('continuous', ends) === 'repeats').toBe(same(1, ends, 0));
  }
});

test('a twill steps by what its ends leave over from fours', () => {
  for (let ends = 9; ends < 41; ends++) {
    const step = twillStep(ends);
    expect(same(2, ends, step)).toBe(true);
    expect(countFit('twill', ends)).toBe(
      new Map([
        [0, 'repeats'],
        [2, 'no diagonal'],
      ]).get(step) ?? 'fits',
    );
  }
  expect([28, 29, 30, 31].map(twillStep)).toEqual([0, 1, 2, -1]);
});

test('rows that close meet on an even count, and so do two weavers', () => {
  for (const weave of ['rounds', 'chased'] as const) {
    expect([28, 29].map((ends) => countFit(weave, ends))).toEqual(['fits', 'unmet']);
  }
});

test('twined strands go with any count', () => {
  expect([28, 29, 30, 31].map((ends) => countFit('twined', ends))).toEqual(Array(4).fill('fits'));
});

test('a row takes up the width of its weaver, and a twined one two thicknesses', () => {
  expect(weaves.map((weave) => tightPitch(weave, flat))).toEqual([6, 6, 2, 6, 6]);
});

test('a weaver that goes on climbs a helix, √(G² + p²) a turn', () => {
  expect(turnLength('continuous', 400, 30)).toBeCloseTo(Math.sqrt(400 ** 2 + 30 ** 2), 12);
  expect(turnLength('chased', 400, 30)).toBeCloseTo(Math.sqrt(400 ** 2 + 60 ** 2), 12);
  expect(turnLength('rounds', 400, 30)).toBe(400);
});

test('every weave of the document has its facts', () => {
  expect(Object.keys(weaveFacts)).toEqual([...weaves]);
});
