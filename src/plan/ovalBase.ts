/**
 * The oval base: a mat with rounded ends. Rows woven flat round a mat make a border of even width, and
 * stakes laid in at its corners fan out over the rounding.
 */
import { z } from 'zod';
import { keysOf } from './allowed.ts';
import { centreLift, upsett } from './baseParts.ts';
import { limits } from './limits.ts';
import { count, length } from './numbers.ts';
import { strandSchema } from './strand.ts';

const { stakes, gap, border, fanned } = limits;

const oval = {
  kind: z.literal('oval'),
  lengthwise: count(stakes.least, stakes.most, 'stakes that run the long way'),
  crosswise: count(stakes.least, stakes.most, 'stakes that run across'),
  stake: strandSchema,
  gap: length(gap.least, gap.most, 'gap between two stakes of the mat, both ways'),
  border: length(border.least, border.most, 'width woven flat round the mat'),
  fanned: count(fanned.least, fanned.most, 'ends laid in at each corner of the mat'),
  upsett,
  centreLift,
};

export const ovalSchema = z.strictObject(oval, { error: keysOf(oval) });
