/**
 * The design document: one schema for what is saved, shared, imported, undone and computed from.
 * It holds what the maker decides and nothing that is computed. Lengths are millimetres.
 */
import { z } from 'zod';
import { documentWords } from '#words/document.ts';
import { refusalWords } from '#words/refusals.ts';
import { keysOf } from './allowed.ts';
import { bandsSchema } from './bands.ts';
import { baseSchema } from './base.ts';
import { checkWhole } from './checkWhole.ts';
import {
  defaultAllowances,
  defaultDisplay,
  defaultHandle,
  defaultOddEnd,
  defaultOddEndPlace,
  defaultRim,
  defaultSet,
} from './defaults.ts';
import { girthByRow, girthLineSchema } from './girthPoints.ts';
import { limits } from './limits.ts';
import { measuredAcross } from './measuredAcross.ts';
import { count, length, oneOf, ratio } from './numbers.ts';
import { handleSchema, rimSchema } from './rim.ts';

/** The version this code writes, and the newest it understands. */
export const planVersion = 1;

export const units = ['in', 'cm', 'mm'] as const;
export const oddEndKinds = ['split', 'added', 'none'] as const;
export const oddEndPlaces = ['middle of a long side', 'middle of a short side', 'corner'] as const;

const { plan: says, oddEnd: oddEndSays, allowances: allowanceSays } = documentWords;

const display = { unit: oneOf(units, says.unit) };

const oddEnd = {
  kind: oneOf(oddEndKinds, oddEndSays.kind),
  at: oneOf(oddEndPlaces, oddEndSays.at).default(defaultOddEndPlace),
};

const set = {
  stakes: ratio(limits.stakeSet.least, limits.stakeSet.most, says.stakeSet),
};

const allowances = {
  tuck: length(0, 500, allowanceSays.tuck),
  splice: count(0, 50, allowanceSays.splice),
  taper: length(0, 5000, allowanceSays.taper),
  waste: ratio(0, 1, allowanceSays.waste),
  usableStrand: length(100, 20_000, allowanceSays.usableStrand),
  roundTo: length(0.5, 100, allowanceSays.roundTo).exactOptional(),
};

const plan = {
  format: z.literal('girthline', { error: '"girthline"' }),
  version: z.literal(planVersion, { error: `${planVersion}` }),
  name: words(limits.name.least, limits.name.most, says.name),
  notes: words(0, 10_000, says.notes).default(''),
  display: z.strictObject(display, { error: keysOf(display) }).default({ ...defaultDisplay }),
  base: baseSchema,
  oddEnd: z.strictObject(oddEnd, { error: keysOf(oddEnd) }).default({ ...defaultOddEnd }),
  bands: bandsSchema,
  set: z.strictObject(set, { error: keysOf(set) }).default({ ...defaultSet }),
  girthLine: girthLineSchema,
  rim: rimSchema.default(structuredClone(defaultRim)),
  handle: handleSchema.default({ ...defaultHandle }),
  allowances: z
    .strictObject(allowances, { error: keysOf(allowances) })
    .default({ ...defaultAllowances }),
  measured: girthByRow(says.measured).default({}),
  measuredAcross: measuredAcross.exactOptional(),
};

const everyKey = z.strictObject(plan, { error: keysOf(plan) });

/** Reads a document: fills in the defaults, and puts the girth line's points in order. */
export const planSchema = everyKey
  .check((context) => {
    if (context.issues.length === 0) checkWhole(context.value, context.issues);
  })
  .overwrite((read) => ({
    ...read,
    girthLine: {
      ...read.girthLine,
      points: read.girthLine.points.toSorted((one, other) => one.row - other.row),
    },
  }));

/** A whole plan with every default filled in. Never changed in place: an edit makes a new one. */
export type Plan = ReadonlyDeep<z.output<typeof everyKey>>;

/** A document as it is written: what has a default may be left out. */
export type PlanDocument = ReadonlyDeep<z.input<typeof everyKey>>;

export type Unit = Plan['display']['unit'];
export type Base = Plan['base'];
export type MatBase = Extract<Base, { readonly kind: 'mat' }>;
export type OvalBase = Extract<Base, { readonly kind: 'oval' }>;
export type WheelBase = Extract<Base, { readonly kind: 'wheel' }>;
export type BoardBase = Extract<Base, { readonly kind: 'board' }>;
export type Corners = MatBase['corners'];
export type CornerKind = Corners['kind'];
export type Strand = MatBase['stake'];
export type OddEnd = Plan['oddEnd'];
export type Handle = Plan['handle'];
export type Band = Plan['bands'][number];
export type Weave = Band['weave'];
/** What was measured across a row, mm outside. */
export type Across = NonNullable<Plan['measuredAcross']>[string];
export type GirthPoint = Plan['girthLine']['points'][number];

type ReadonlyDeep<T> = { readonly [Key in keyof T]: ReadonlyDeep<T[Key]> };

/** A text of `least` to `most` characters. */
function words(least: number, most: number, what: string) {
  const error = refusalWords.allowed.text(`${least}`, `${most}`);
  return z.string({ error }).min(least, { error }).max(most, { error }).meta({ description: what });
}
