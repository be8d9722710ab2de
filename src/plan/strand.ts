/** One kind of strand: the section of a stake, a weaver or a rim hoop. */
import { z } from 'zod';
import { keysOf } from './allowed.ts';
import { limits } from './limits.ts';
import { length, oneOf } from './numbers.ts';

export const strandSections = ['flat', 'flat-oval', 'half-round', 'round'] as const;

const shape = {
  section: oneOf(strandSections, 'shape of the strand cut across'),
  width: length(limits.width.least, limits.width.most, 'width, in the face of the weave'),
  thickness: length(
    limits.thickness.least,
    limits.thickness.most,
    'thickness, through the wall (for a round strand the same as its width)',
  ),
};

export const strandSchema = z.strictObject(shape, { error: keysOf(shape) });
