/**
 * The wheel base: spokes crossing at a hub, the first rows woven flat round it out to the base's edge.
 * Every spoke gives two ends; more ends may be laid in partway, as makers do.
 */
import { z } from 'zod';
import { keysOf } from './allowed.ts';
import { centreLift, upsett } from './baseParts.ts';
import { limits } from './limits.ts';
import { count, length } from './numbers.ts';
import { strandSchema } from './strand.ts';

const { spokes, ends, diameter, gap } = limits;

const added = {
  ends: count(1, ends.most, 'ends laid in between the spokes'),
  at: length(diameter.least, diameter.most, 'width across the base where they are laid in'),
};

const wheel = {
  kind: z.literal('wheel'),
  spokes: count(spokes.least, spokes.most, 'spokes that cross at the hub'),
  stake: strandSchema,
  hub: length(gap.least, diameter.most, 'width across the hub, where the spokes lie on each other'),
  diameter: length(diameter.least, diameter.most, 'width across the base as woven flat'),
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
      message: `less than the ${across} mm across the base`,
      params: { found: `${hub}` },
    });
  }
  if (more && (more.at < hub || more.at >= across)) {
    context.issues.push({
      code: 'custom',
      input: more.at,
      path: ['added', 'at'],
      message: `from the hub's ${hub} mm to less than the ${across} mm across the base`,
      params: { found: `${more.at}` },
    });
  }
});
