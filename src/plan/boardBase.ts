/** A wooden or slotted base: a plain round or rectangular board that carries the stakes. */
import { z } from 'zod';
import { keysOf } from './allowed.ts';
import { upsett } from './baseParts.ts';
import { limits } from './limits.ts';
import { count, length } from './numbers.ts';
import { strandSchema } from './strand.ts';

const { boardEnds, boardThickness, diameter, ends, gap } = limits;

const common = {
  kind: z.literal('board'),
  thickness: length(boardThickness.least, boardThickness.most, 'thickness of the board'),
  ends: count(boardEnds.least, ends.most, 'stakes that stand in the slot'),
  stake: strandSchema,
  slot: length(gap.least, gap.most, 'depth of the slot or hole the stakes stand in'),
  upsett,
};

const round = {
  ...common,
  shape: z.literal('round'),
  length: length(diameter.least, diameter.most, 'width across the board'),
};

const rectangle = {
  ...common,
  shape: z.literal('rectangle'),
  length: length(diameter.least, diameter.most, 'length of the board'),
  width: length(diameter.least, diameter.most, 'width of the board'),
};

export const boardShapes = ['round', 'rectangle'] as const;

export const boardSchema = z.discriminatedUnion(
  'shape',
  [
    z.strictObject(round, { error: keysOf(round) }),
    z.strictObject(rectangle, { error: keysOf(rectangle) }),
  ],
  { error: '"round" or "rectangle"' },
);
