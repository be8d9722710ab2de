import { expect, test } from 'vitest';
import { paperOf } from '../../../src/views/print/paperHere.ts';

test.each([
  [['en-US'], 'letter'],
  [['fr-CA', 'en'], 'letter'],
  [['es-MX'], 'letter'],
  [['fil-PH'], 'letter'],
  [['en'], 'letter'],
  [['en-GB'], 'a4'],
  [['de-DE', 'de', 'en-US'], 'a4'],
  [['de'], 'a4'],
  [['ja'], 'a4'],
  [['ja-JP'], 'a4'],
  [['es-AR'], 'a4'],
  // a language without its territory, and then one with it
  [['en', 'en-GB'], 'a4'],
  [['not a language', 'de-AT'], 'a4'],
  [[], 'a4'],
] as const)('where %j is read, the paper is %s', (languages, paper) => {
  expect(paperOf(languages)).toBe(paper);
});
