/** Keys that several kinds of base have. */
import { limits } from './limits.ts';
import { length, oneOf } from './numbers.ts';

export const upsetts = ['rolled', 'creased'] as const;

export const upsett = oneOf(upsetts, 'how the stake turns up from base to wall');

export const centreLift = length(
  limits.centreLift.least,
  limits.centreLift.most,
  'how far the middle of the base is pushed in, at most half of its shorter side',
);
