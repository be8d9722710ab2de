/** Bands: so many rows of one weaver in one weave, from the base up. */
import { z } from 'zod';
import { keysOf } from './allowed.ts';
import { defaultColour, defaultPacking } from './defaults.ts';
import { limits } from './limits.ts';
import { count, oneOf, ratio } from './numbers.ts';
import { strandSchema } from './strand.ts';

export const weaves = ['continuous', 'rounds', 'twined', 'chased', 'twill'] as const;

const colour = 'a colour name of 1 to 30 letters, or #rrggbb';

const shape = {
  rows: count(limits.rows.least, limits.rows.most, 'rows of this band'),
  weave: oneOf(weaves, 'how the weaver goes; "rounds" are start-stop rows'),
  weaver: strandSchema,
  packing: ratio(
    limits.packing.least,
    limits.packing.most,
    'wall taken up by a row over the width of its weaver; 1 is butted tight',
  ).default(defaultPacking),
  colour: z
    .string({ error: colour })
    .regex(/^(?:[A-Za-z][A-Za-z -]{0,29}|#[0-9A-Fa-f]{6})$/, { error: colour })
    .default(defaultColour)
    .meta({ description: 'colour of the weaver, for the picture and the cut list' }),
};

const { least, most } = limits.bands;
const several = `a list of ${least} to ${most} bands`;

export const bandsSchema = z
  .array(z.strictObject(shape, { error: keysOf(shape) }), { error: several })
  .min(least, { error: several })
  .max(most, { error: several });
