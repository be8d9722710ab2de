import { expect, test } from 'vitest';
import { withLengths } from '../../src/plan/lengthText.ts';

test('a length in a sentence is written in the unit that is shown', () => {
  expect(withLengths('off by {mm:3.175} of {mm:400}', 'in')).toBe('off by 1/8 in of 15 3/4 in');
  expect(withLengths('off by {mm:3.175}', 'cm')).toBe('off by 0.3 cm');
});

test('a length too short for the unit is told as less than its least, and only nothing as 0', () => {
  expect(withLengths('over by {mm:0.3}', 'in')).toBe('over by less than 1/16 in');
  expect(withLengths('over by {mm:0.3}', 'cm')).toBe('over by less than 0.1 cm');
  expect(withLengths('over by {mm:0.3}', 'mm')).toBe('over by 0.3 mm');
  expect(withLengths('over by {mm:0.003}', 'mm')).toBe('over by less than 0.1 mm');
  expect(withLengths('over by {mm:0}', 'in')).toBe('over by 0 in');
});

test('what lies between two lengths is what one gets from both as they are shown', () => {
  // 39.6 and 2.2 sixteenths: 37.4 apart, but shown as 40 and 2
  const [long, short] = [(39.6 * 25.4) / 16, (2.2 * 25.4) / 16];
  expect(withLengths(`in by {mm:${long}-${short}}`, 'in')).toBe('in by 2 3/8 in');
  expect(withLengths(`in by {mm:${short}-${long}}`, 'in')).toBe('in by 2 3/8 in');
  expect(withLengths(`in by {mm:${long - short}}`, 'in')).toBe('in by 2 5/16 in');
});
