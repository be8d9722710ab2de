/** A wooden or slotted base: a plain round or rectangular board that carries the stakes. */
import { z } from 'zod';
import { documentWords } from '#words/document.ts';
import { allowedWords, keysOf } from './allowed.ts';
import { upsett } from './baseParts.ts';
import { limits } from './limits.ts';
import { count, length } from './numbers.ts';
import { strandSchema } from './strand.ts';

const { boardEnds, boardThickness, diameter, ends, gap } = limits;
const says = documentWords.board;

const common = {
  kind: z.literal('board'),
  thickness: length(boardThickness.least, boardThickness.most, says.thickness),
  ends: count(boardEnds.least, ends.most, says.ends),
  stake: strandSchema,
  slot: length(gap.least, gap.most, says.slot),
  upsett,
};

const round = {
  ...common,
  shape: z.literal('round'),
  length: length(diameter.least, diameter.most, says.diameter),
};

const rectangle = {
  ...common,
  shape: z.literal('rectangle'),
  length: length(diameter.least, diameter.most, says.length),
  width: length(diameter.least, diameter.most, says.width),
};

export const boardShapes = ['round', 'rectangle'] as const;

export const boardSchema = z.discriminatedUnion(
  'shape',
  [
    z.strictObject(round, { error: keysOf(round) }),
    z.strictObject(rectangle, { error: keysOf(rectangle) }),
  ],
  { error: allowedWords(boardShapes) },
);
