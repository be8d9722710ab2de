/** Keys that several kinds of base have. */
import { documentWords } from '#words/document.ts';
import { limits } from './limits.ts';
import { length, oneOf } from './numbers.ts';

export const upsetts = ['rolled', 'creased'] as const;

export const upsett = oneOf(upsetts, documentWords.base.upsett);

export const centreLift = length(
  limits.centreLift.least,
  limits.centreLift.most,
  documentWords.base.centreLift,
);
