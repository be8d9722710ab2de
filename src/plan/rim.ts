/** Rim and handle. */
import { z } from 'zod';
import { documentWords } from '#words/document.ts';
import { refusalWords } from '#words/refusals.ts';
import { keysOf, kindsOf } from './allowed.ts';
import { limits } from './limits.ts';
import { length, oneOf } from './numbers.ts';
import { strandSchema } from './strand.ts';

export const handleKinds = ['none', 'swing', 'fixed'] as const;
export const handleDirections = ['length', 'width'] as const;

/** Sizes of a handle, mm. */
export const handleLimits = {
  rise: { least: 1, most: 2000 },
  spread: { least: 10, most: 3000 },
  earHeight: { least: 1, most: 1000 },
  earSpread: { least: 0, most: 500 },
} as const;

const { rim: rimSays, handle: says } = documentWords;

/** A length of a handle, within `range`, mm. */
const within = (range: { readonly least: number; readonly most: number }, what: string) =>
  length(range.least, range.most, what);

const width = length(limits.width.least, limits.width.most, rimSays.width);
const thickness = length(limits.thickness.least, limits.thickness.most, rimSays.thickness);

const lasher = { width };
const rim = {
  hoop: strandSchema,
  lap: length(0, 500, rimSays.lap),
  filler: z
    .boolean({ error: refusalWords.allowed.trueOrFalse })
    .meta({ description: rimSays.filler }),
  lasher: z.strictObject(lasher, { error: keysOf(lasher) }),
};

export const rimSchema = z.strictObject(rim, { error: keysOf(rim) });

const ear = {
  height: within(handleLimits.earHeight, says.earHeight),
  spread: within(handleLimits.earSpread, says.earSpread),
};
const earSchema = z.strictObject(ear, { error: keysOf(ear) });
const bow = { width, thickness };
const wrap = { width };

const bowAndWrap = {
  rise: within(handleLimits.rise, says.rise),
  bow: z.strictObject(bow, { error: keysOf(bow) }),
  wrap: z.strictObject(wrap, { error: keysOf(wrap) }),
};
const none = { kind: z.literal('none') };
const swing = { kind: z.literal('swing'), ...bowAndWrap, ear: earSchema };
const fixed = {
  kind: z.literal('fixed'),
  ...bowAndWrap,
  ear: earSchema.exactOptional(),
  across: oneOf(handleDirections, says.across),
  spread: within(handleLimits.spread, says.spread),
};

export const handleSchema = z.discriminatedUnion(
  'kind',
  [
    z.strictObject(none, { error: keysOf(none) }),
    z.strictObject(swing, { error: keysOf(swing) }),
    z.strictObject(fixed, { error: keysOf(fixed) }),
  ],
  { error: (issue) => kindsOf(issue, handleKinds) },
);
