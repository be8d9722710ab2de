import { expect, test } from 'vitest';
import { restingLength, steppedLength } from '../../src/plan/lengthStep.ts';

test('a step is a sixteenth of an inch, or a millimetre', () => {
  expect(steppedLength(508, 'in', 1, false)).toBe(509.5875);
  expect(steppedLength(508, 'mm', -1, false)).toBe(507);
  expect(steppedLength(508, 'cm', 1, false)).toBe(509);
});

test('a large step is half an inch, or ten millimetres', () => {
  expect(steppedLength(508, 'in', 1, true)).toBe(520.7);
  expect(steppedLength(508, 'mm', 1, true)).toBe(518);
});

test('a dragged girth comes to rest on a mark of the tape', () => {
  expect(restingLength(509, 'in')).toBe(509.5875);
  expect(restingLength(509.4, 'mm')).toBe(509);
});

test('sixteen steps of a sixteenth are one inch exactly', () => {
  let girth = 508;
  for (let step = 0; step < 16; step++) girth = steppedLength(girth, 'in', 1, false);
  expect(girth).toBe(533.4);
});
