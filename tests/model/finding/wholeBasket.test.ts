import { expect, test } from 'vitest';
import { notSettled } from '../../../src/model/finding/notSettled.ts';
import { strandTooShort } from '../../../src/model/finding/strandTooShort.ts';
import { tipsEasily } from '../../../src/model/finding/tipsEasily.ts';
import { domed } from '../readings.ts';

const reading = domed(0);

test('a basket that tips at less than 15° is warned of', () => {
  const tipping = { ...reading, summary: { ...reading.summary, tipAngle: 14 } };
  expect(tipsEasily(tipping)).toMatchObject([{ kind: 'tips-easily', value: 14, limit: 15 }]);
});

test('a basket that bears 15° is passed over', () => {
  expect(tipsEasily({ ...reading, summary: { ...reading.summary, tipAngle: 15 } })).toEqual([]);
});

test('a basket that rocks is not said to tip as well', () => {
  const rocking = domed(-8);
  expect(tipsEasily({ ...rocking, summary: { ...rocking.summary, tipAngle: 2 } })).toEqual([]);
});

test('a shape that did not come to rest is rough, and said to be', () => {
  const moving = { ...reading.settling, converged: false, lastStep: 0.7 };
  expect(notSettled({ ...reading, settling: moving })).toMatchObject([
    { kind: 'not-settled', severity: 'warn', value: 0.7 },
  ]);
});

test('a shape that came to rest is passed over', () => {
  expect(notSettled(reading)).toEqual([]);
});

test('a stake longer than the strands at hand is warned of', () => {
  // 100 mm of base, twice 100 mm of wall and 70 mm to tuck: 440 mm.
  const allowances = { ...reading.plan.allowances, usableStrand: 430 };
  expect(strandTooShort({ ...reading, plan: { ...reading.plan, allowances } })).toMatchObject([
    { kind: 'strand-too-short', value: 440, limit: 430 },
  ]);
});

test('a stake that the strands at hand are long enough for is passed over', () => {
  expect(strandTooShort(reading)).toEqual([]);
});
