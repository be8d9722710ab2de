import { expect, test } from 'vitest';
import { girthDoubt, heightDoubt } from '../../../src/model/replan/doubt.ts';

const asked = (tape: number) => girthDoubt(tape, 9, 700, 480)?.text ?? '';

test('a tape near to what was planned is taken without a word', () => {
  expect(girthDoubt(690, 9, 700, 480)).toBeNull();
  expect(girthDoubt(740, 9, 700, 480)).toBeNull();
});

test('twice the girth, half of it, and less than the base allows are each asked about', () => {
  expect(asked(1400)).toMatch(/2\.0 times .* round once/);
  expect(asked(470)).toMatch(/shorter than the base allows/);
  expect(girthDoubt(400, 9, 700, 300)?.text).toMatch(/0\.57 times/);
  expect(asked(630)).toMatch(/{mm:70} less than row 9/);
});

test('what is no girth at all cannot be kept', () => {
  for (const tape of [Number.NaN, 0, -5, 3, 20_000]) {
    expect(girthDoubt(tape, 9, 700, 480)?.isImpossible).toBe(true);
  }
});

test('a height that no packing makes is asked about', () => {
  expect(heightDoubt(100, 20, 98)).toBeNull();
  expect(heightDoubt(160, 20, 98)?.text).toMatch(/from the table/);
  expect(heightDoubt(0, 20, 98)?.isImpossible).toBe(true);
});
