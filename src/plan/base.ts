/**
 * The base of a basket: a mat of stakes crossed at right angles, a wheel of spokes, a mat with rounded
 * ends, or a board. A further kind is a further member of `baseSchema`, and a case in `baseSize.ts`.
 */
import { z } from 'zod';
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

const hold = {
  hold: ratio(
    cornerHold.least,
    cornerHold.most,
    "share of the corner's bend that is set into the weaver at row 1",
  ).default(defaultCornerHold),
  holdRows: count(0, rows.most, 'row at which the corner hold has fallen to 0').default(
    defaultCornerHoldRows,
  ),
};

const pinned = {
  kind: z.literal('pinned'),
  rows: count(0, rows.most, 'rows for which the corner stakes are pinned together'),
  ...hold,
};

const square = {
  kind: z.literal('square'),
  rows: z
    .literal(0, { error: '0, or left out: a square corner has no rows of its own' })
    .default(0)
    .meta({ description: 'a square corner has no rows of its own' }),
  ...hold,
};

const fanned = {
  kind: z.literal('fanned'),
  rows: count(0, rows.most, 'rows that lie flat round the base before the wall rises'),
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
  lengthwise: length(gap.least, gap.most, 'gap between two lengthwise stakes'),
  crosswise: length(gap.least, gap.most, 'gap between two crosswise stakes'),
};

const fillers = {
  lengthwise: count(mostFillers.least, mostFillers.most, 'short strands laid the long way'),
  crosswise: count(mostFillers.least, mostFillers.most, 'short strands laid across'),
};

const mat = {
  kind: z.literal('mat'),
  lengthwise: count(stakes.least, stakes.most, 'stakes that run the long way'),
  crosswise: count(stakes.least, stakes.most, 'stakes that run across'),
  stake: strandSchema,
  gap: length(gap.least, gap.most, 'gap between two stakes, both ways').exactOptional(),
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
      message: 'exactly one of "gap" and "gaps" (a gap of 0 is written as 0)',
      params: { found: gap === undefined ? 'neither of the two' : 'both of them' },
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
