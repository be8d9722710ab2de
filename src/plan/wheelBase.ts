/**
 * The wheel base: spokes crossing at a hub, the first rows woven flat round it out to the base's edge.
 * Every spoke gives two ends; more ends may be laid in partway, as makers do.
 */
import { z } from 'zod';
import { documentWords } from '#words/document.ts';
import { refusalWords } from '#words/refusals.ts';
import { keysOf } from './allowed.ts';
import { centreLift, upsett } from './baseParts.ts';
import { limits } from './limits.ts';
import { count, length } from './numbers.ts';
import { strandSchema } from './strand.ts';

const { spokes, ends, diameter, gap } = limits;
const says = documentWords.wheel;

const added = {
  ends: count(1, ends.most, says.addedEnds),
  at: length(diameter.least, diameter.most, says.addedAt),
};

const wheel = {
  kind: z.literal('wheel'),
  spokes: count(spokes.least, spokes.most, says.spokes),
  stake: strandSchema,
  hub: length(gap.least, diameter.most, says.hub),
  diameter: length(diameter.least, diameter.most, says.diameter),
  added: z.strictObject(added, { error: keysOf(added) }).exactOptional(),
  upsett,
  centreLift,
};

export const wheelSchema = z.strictObject(wheel, { error: keysOf(wheel) }).check((context) => {
  const { hub, diameter: across, added: more } = context.value;
  if (hub >= across) {
    context.issues.push({
      code: 'custom',
      input: hub,
      path: ['hub'],
      message: refusalWords.allowed.hub(`${across}`),
      params: { found: `${hub}` },
    });
  }
  if (more && (more.at < hub || more.at >= across)) {
    context.issues.push({
      code: 'custom',
      input: more.at,
      path: ['added', 'at'],
      message: refusalWords.allowed.addedAt(`${hub}`, `${across}`),
      params: { found: `${more.at}` },
    });
  }
});
