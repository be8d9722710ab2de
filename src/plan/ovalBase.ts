/**
 * The oval base: a mat with rounded ends. Rows woven flat round a mat make a border of even width, and
 * stakes laid in at its corners fan out over the rounding.
 */
import { z } from 'zod';
import { documentWords } from '#words/document.ts';
import { keysOf } from './allowed.ts';
import { centreLift, upsett } from './baseParts.ts';
import { limits } from './limits.ts';
import { count, length } from './numbers.ts';
import { strandSchema } from './strand.ts';

const { stakes, gap, border, fanned } = limits;
const { base: baseSays, oval: says } = documentWords;

const oval = {
  kind: z.literal('oval'),
  lengthwise: count(stakes.least, stakes.most, baseSays.lengthwise),
  crosswise: count(stakes.least, stakes.most, baseSays.crosswise),
  stake: strandSchema,
  gap: length(gap.least, gap.most, says.gap),
  border: length(border.least, border.most, says.border),
  fanned: count(fanned.least, fanned.most, says.fanned),
  upsett,
  centreLift,
};

export const ovalSchema = z.strictObject(oval, { error: keysOf(oval) });
