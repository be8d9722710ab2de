import { expect, test } from 'vitest';
import { stepWords } from '../../../src/model/buildup/stepWords.ts';
import { demos } from '../../../src/plan/demo/demos.ts';
import { planSchema } from '../../../src/plan/schema.ts';

const trug = demos[0].plan;

test('before the first row the stake is split, the sides come up and the corners are pinned', () => {
  expect(stepWords(trug, 1, [])).toEqual([
    'Split the stake at the middle of a long side.',
    'The sides come up, the stakes bending over the first rows.',
    'Pin the two stakes of each corner together, for 8 rows.',
    'Begin with one weaver that goes round and round: natural flat oval 3/16 in.',
    'Row 1 of 32.',
  ]);
});

test('the pins come off in the row after the pinned ones', () => {
  expect(stepWords(trug, 9, [])).toEqual(['Take the pins off the corners.', 'Row 9 of 32.']);
  expect(stepWords(trug, 8, [])).toEqual(['Row 8 of 32.']);
});

test('a row in which a weaver runs out says so', () => {
  expect(stepWords(trug, 4, [4])).toContain('The weaver runs out: splice a new one over 4 stakes.');
  expect(stepWords(trug, 5, [4])).toEqual(['Row 5 of 32.']);
});

test('a weaver that runs out shortly before the next band is told to be followed by a short one', () => {
  const short = 'A short one will do: row 21 takes another.';
  expect(stepWords(trug, 18, [18])).not.toContain(short);
  for (const row of [19, 20]) expect(stepWords(trug, row, [row])).toContain(short);
  expect(stepWords(trug, 21, [21])).not.toContain(short);
});

test('a new band is begun with its own weaver, and the last row is the last one', () => {
  expect(stepWords(trug, 21, [])[0]).toMatch(/^Go on with .*: walnut flat oval/);
  expect(stepWords(trug, 32, [])).toEqual(['Row 32: the last one.']);
});

test('on fanned corners the sides come up after the flat rows', () => {
  const corners = { kind: 'fanned', rows: 3 };
  const fanned = planSchema.parse({ ...trug, base: { ...trug.base, corners } });
  expect(stepWords(fanned, 1, []).join(' ')).not.toContain('sides come up');
  expect(stepWords(fanned, 4, [])[0]).toContain('sides come up');
});
