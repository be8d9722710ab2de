/**
 * The base of a basket: a mat of stakes crossed at right angles, a wheel of spokes, a mat with rounded
 * ends, or a board. A further kind is a further member of `baseSchema`, and a case in `baseSize.ts`.
 */
import { z } from 'zod';
import { documentWords } from '#words/document.ts';
import { refusalWords } from '#words/refusals.ts';
import { keysOf, kindsOf } from './allowed.ts';
import { centreLift, upsett } from './baseParts.ts';
import { boardSchema } from './boardBase.ts';
import { defaultCornerHold, defaultCornerHoldRows } from './defaults.ts';
import { limits } from './limits.ts';
import { count, length, ratio } from './numbers.ts';
import { ovalSchema } from './ovalBase.ts';
import { strandSchema } from './strand.ts';
import { wheelSchema } from './wheelBase.ts';

export const baseKinds = ['mat', 'wheel', 'oval', 'board'] as const;
export const cornerKinds = ['pinned', 'square', 'fanned'] as const;

const { stakes, rows, gap, cornerHold, fillers: mostFillers } = limits;
const { base: baseSays, mat: says, corners: cornerSays } = documentWords;

const hold = {
  hold: ratio(cornerHold.least, cornerHold.most, cornerSays.hold).default(defaultCornerHold),
  holdRows: count(0, rows.most, cornerSays.holdRows).default(defaultCornerHoldRows),
};

const pinned = {
  kind: z.literal('pinned'),
  rows: count(0, rows.most, cornerSays.pinnedRows),
  ...hold,
};

const square = {
  kind: z.literal('square'),
  rows: z
    .literal(0, { error: refusalWords.allowed.squareRows })
    .default(0)
    .meta({ description: cornerSays.squareRows }),
  ...hold,
};

const fanned = {
  kind: z.literal('fanned'),
  rows: count(0, rows.most, cornerSays.fannedRows),
  ...hold,
};

const cornersSchema = z.discriminatedUnion(
  'kind',
  [
    z.strictObject(pinned, { error: keysOf(pinned) }),
    z.strictObject(square, { error: keysOf(square) }),
    z.strictObject(fanned, { error: keysOf(fanned) }),
  ],
  { error: (issue) => kindsOf(issue, cornerKinds) },
);

const gaps = {
  lengthwise: length(gap.least, gap.most, says.lengthwiseGap),
  crosswise: length(gap.least, gap.most, says.crosswiseGap),
};

const fillers = {
  lengthwise: count(mostFillers.least, mostFillers.most, says.lengthwiseFillers),
  crosswise: count(mostFillers.least, mostFillers.most, says.crosswiseFillers),
};

const mat = {
  kind: z.literal('mat'),
  lengthwise: count(stakes.least, stakes.most, baseSays.lengthwise),
  crosswise: count(stakes.least, stakes.most, baseSays.crosswise),
  stake: strandSchema,
  gap: length(gap.least, gap.most, says.gap).exactOptional(),
  gaps: z.strictObject(gaps, { error: keysOf(gaps) }).exactOptional(),
  corners: cornersSchema,
  fillers: z.strictObject(fillers, { error: keysOf(fillers) }).exactOptional(),
  upsett,
  centreLift,
};

const matSchema = z.strictObject(mat, { error: keysOf(mat) }).check((context) => {
  const { gap, gaps } = context.value;
  if ((gap === undefined) === (gaps === undefined)) {
    context.issues.push({
      code: 'custom',
      input: gap,
      path: ['gap'],
      message: refusalWords.allowed.oneGap,
      params: { found: gap === undefined ? refusalWords.found.neither : refusalWords.found.both },
    });
  }
});

export const baseSchema = z.discriminatedUnion(
  'kind',
  [matSchema, wheelSchema, ovalSchema, boardSchema],
  {
    error: (issue) => kindsOf(issue, baseKinds),
  },
);
