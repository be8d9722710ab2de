import { expect, test } from 'vitest';
import { localesOf } from '../../src/views/dates.ts';

test('a date is in the language of the words, in the way of the reader who has that language', () => {
  expect(localesOf(['en-GB', 'en', 'fr'], 'en')).toEqual(['en-GB', 'en', 'en']);
  expect(localesOf(['fr-CA', 'en-AU'], 'en')).toEqual(['en-AU', 'en']);
  expect(localesOf(['fr'], 'en')).toEqual(['en']);
  expect(localesOf(['en-US'], 'de')).toEqual(['de']);
  expect(localesOf([], 'en')).toEqual(['en']);
});
