/**
 * The base of a basket. So far one kind, the mat: flat stakes crossed at right angles. A further
 * kind is a further member of `baseSchema`, and a further case in `baseSize.ts`.
 */
import { z } from 'zod';
import { keysOf, kindsOf } from './allowed.ts';
import { defaultCornerHold, defaultCornerHoldRows } from './defaults.ts';
import { limits } from './limits.ts';
import { count, length, oneOf, ratio } from './numbers.ts';
import { strandSchema } from './strand.ts';

const baseKinds = ['mat'] as const;
export const cornerKinds = ['pinned', 'square', 'fanned'] as const;
export const upsetts = ['rolled', 'creased'] as const;

const { stakes, rows, gap, centreLift, cornerHold } = limits;

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

const mat = {
  kind: z.literal('mat'),
  lengthwise: count(stakes.least, stakes.most, 'stakes that run the long way'),
  crosswise: count(stakes.least, stakes.most, 'stakes that run across'),
  stake: strandSchema,
  gap: length(gap.least, gap.most, 'gap between two stakes, both ways').exactOptional(),
  gaps: z.strictObject(gaps, { error: keysOf(gaps) }).exactOptional(),
  corners: cornersSchema,
  upsett: oneOf(upsetts, 'how the stake turns up from base to wall'),
  centreLift: length(
    centreLift.least,
    centreLift.most,
    'how far the middle of the base is pushed in, at most half of its shorter side',
  ),
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

export const baseSchema = z.discriminatedUnion('kind', [matSchema], {
  error: (issue) => kindsOf(issue, baseKinds),
});
