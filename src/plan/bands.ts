/** Bands: so many rows of one weaver in one weave, from the base up. */
import { z } from 'zod';
import { documentWords } from '#words/document.ts';
import { refusalWords } from '#words/refusals.ts';
import { keysOf } from './allowed.ts';
import { defaultColour, defaultPacking } from './defaults.ts';
import { limits } from './limits.ts';
import { count, oneOf, ratio } from './numbers.ts';
import { strandSchema } from './strand.ts';

export const weaves = ['continuous', 'rounds', 'twined', 'chased', 'twill'] as const;

const colour = refusalWords.allowed.colour;
const says = documentWords.bands;

const shape = {
  rows: count(limits.rows.least, limits.rows.most, says.rows),
  weave: oneOf(weaves, says.weave),
  weaver: strandSchema,
  packing: ratio(limits.packing.least, limits.packing.most, says.packing).default(defaultPacking),
  colour: z
    .string({ error: colour })
    .regex(/^(?:[A-Za-z][A-Za-z -]{0,29}|#[0-9A-Fa-f]{6})$/, { error: colour })
    .default(defaultColour)
    .meta({ description: says.colour }),
};

const { least, most } = limits.bands;
const several = refusalWords.allowed.bands(`${least}`, `${most}`);

export const bandsSchema = z
  .array(z.strictObject(shape, { error: keysOf(shape) }), { error: several })
  .min(least, { error: several })
  .max(most, { error: several });
