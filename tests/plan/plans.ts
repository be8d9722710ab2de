/** Documents that the tests of this room start from. */
import fc from 'fast-check';
import { checkPlan } from '../../src/plan/read.ts';
import type { MatBase, Plan, PlanDocument } from '../../src/plan/schema.ts';

/**
 * An oblong plan of the trade, for its arithmetic (common practice, no source): 5 lengthwise and 9
 * crosswise stakes of 1/2 in with 1/4 in gaps, one of them split, 32 rows of 11/64 in flat oval.
 */
export const tradeOblong = {
  format: 'girthline',
  version: 1,
  name: 'Oblong of the trade',
  base: {
    kind: 'mat',
    lengthwise: 5,
    crosswise: 9,
    stake: { section: 'flat', width: 12.7, thickness: 1.2 },
    gap: 6.35,
    corners: { kind: 'pinned', rows: 8 },
    upsett: 'rolled',
    centreLift: 15,
  },
  oddEnd: { kind: 'split' },
  bands: [
    {
      rows: 32,
      weave: 'continuous',
      weaver: { section: 'flat-oval', width: (11 / 64) * 25.4, thickness: 2 },
    },
  ],
  girthLine: { points: [{ row: 32, girth: 508 }] },
} as const satisfies PlanDocument;

/** The plan of a document that must be right. */
export function planOf(document: PlanDocument): Plan {
  const reading = checkPlan(document, 'test');
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  return reading.plan;
}

/** The trade plan with some keys changed. */
export function tradePlan(changes: Partial<PlanDocument> = {}): Plan {
  return planOf({ ...tradeOblong, ...changes });
}

/** The mat of a plan that has one. */
export function matOf({ base }: Pick<Plan, 'base'>): MatBase {
  if (base.kind !== 'mat') throw new RangeError(`base.kind is ${base.kind}, allowed "mat"`);
  return base;
}

const millimetres = (least: number, most: number) =>
  fc.integer({ min: Math.ceil(least * 10), max: Math.floor(most * 10) }).map((n) => n / 10);

const strand = fc.record({
  section: fc.constantFrom('flat', 'flat-oval', 'half-round', 'round'),
  width: millimetres(3, 20),
  thickness: millimetres(0.5, 5),
});

const band = fc.record(
  {
    rows: fc.integer({ min: 1, max: 20 }),
    weave: fc.constantFrom('continuous', 'rounds', 'twined', 'chased', 'twill'),
    weaver: strand,
    packing: fc.constantFrom(0.9, 1, 1.05, 1.3),
    colour: fc.constantFrom('natural', 'walnut', '#a04020'),
  },
  { requiredKeys: ['rows', 'weave', 'weaver'] },
);

const corners = fc.oneof(
  fc.record({ kind: fc.constant('square') }),
  fc.record({
    kind: fc.constantFrom('pinned', 'fanned'),
    rows: fc.integer({ min: 0, max: 12 }),
    hold: fc.constantFrom(0, 0.5, 1),
    holdRows: fc.integer({ min: 0, max: 30 }),
  }),
);

const upsett = fc.constantFrom('rolled', 'creased');

/** Share of the most that the middle may be pushed in. */
const lift = fc.double({ min: 0, max: 1, noNaN: true });

/** Any mat base that is allowed, with small numbers. */
const anyMat = fc
  .record({
    lengthwise: fc.integer({ min: 2, max: 30 }),
    crosswise: fc.integer({ min: 2, max: 30 }),
    stake: strand,
    gaps: fc.record({ lengthwise: millimetres(0, 30), crosswise: millimetres(0, 30) }),
    oneGap: fc.boolean(),
    corners,
    fillers: fc.option(fc.constantFrom({ lengthwise: 0, crosswise: 4 }), { nil: undefined }),
    upsett,
    lift,
  })
  .map(({ gaps, oneGap, lift: share, fillers, ...rest }) => {
    const gap = oneGap ? { gap: gaps.lengthwise } : { gaps };
    const filled = fillers ? { fillers } : {};
    const centreLift = share * rest.stake.width;
    return { kind: 'mat', ...rest, ...gap, ...filled, centreLift } as const;
  });

/** Any wheel base that is allowed. */
const anyWheel = fc
  .record({
    spokes: fc.integer({ min: 2, max: 40 }),
    stake: strand,
    diameter: millimetres(40, 600),
    hub: fc.double({ min: 0, max: 0.9, noNaN: true }),
    more: fc.integer({ min: 0, max: 30 }),
    at: fc.double({ min: 0, max: 0.9, noNaN: true }),
    upsett,
    lift,
  })
  .map(({ hub: share, more, at, lift: lifted, diameter, ...rest }) => {
    const hub = share * diameter;
    const added = more > 0 ? { added: { ends: more, at: hub + at * (diameter - hub) } } : {};
    const isThere = !added.added || added.added.at >= 5;
    const centreLift = Math.min(200, (lifted * diameter) / 2);
    return {
      kind: 'wheel',
      ...rest,
      hub,
      diameter,
      ...(isThere ? added : {}),
      centreLift,
    } as const;
  });

/** Any oval base that is allowed. */
const anyOval = fc
  .record({
    lengthwise: fc.integer({ min: 2, max: 20 }),
    crosswise: fc.integer({ min: 2, max: 30 }),
    stake: strand,
    gap: millimetres(0, 20),
    border: millimetres(5, 80),
    fanned: fc.integer({ min: 0, max: 6 }),
    upsett,
    lift,
  })
  .map(({ lift: share, ...rest }) => {
    return { kind: 'oval', ...rest, centreLift: share * rest.border } as const;
  });

/** Any board that is allowed. */
const anyBoard = fc
  .record({
    thickness: millimetres(1, 20),
    ends: fc.integer({ min: 4, max: 80 }),
    stake: strand,
    slot: millimetres(0, 20),
    upsett,
    length: millimetres(20, 600),
    width: fc.option(millimetres(20, 600)),
  })
  .map(({ width, ...rest }) => {
    const shape = width === null ? { shape: 'round' } : { shape: 'rectangle', width };
    return { kind: 'board', ...rest, ...shape } as const;
  });

/** Any base that is allowed, every other one a mat. */
const anyBase = fc.oneof({ arbitrary: anyMat, weight: 3 }, anyWheel, anyOval, anyBoard);

/** Any few bands. */
const anyBands = fc.array(band, { minLength: 1, maxLength: 5 });

/** Any document that is allowed, with what may be left out now there and now not. */
export const anyDocument = documentOn(anyBase);

/** Any such document of a basket on a mat. */
export const anyMatDocument = documentOn(anyMat);

function documentOn<B>(base: fc.Arbitrary<B>) {
  return fc
    .record({
      base,
      bands: anyBands,
      rowsAt: fc.uniqueArray(fc.integer({ min: 1, max: 100 }), { minLength: 1, maxLength: 8 }),
      girth: millimetres(100, 2000),
      byHand: fc.option(fc.integer({ min: 1, max: 100 })),
      notes: fc.option(fc.string()),
      oddEnd: fc.option(fc.constantFrom('split', 'added', 'none')),
      unit: fc.option(fc.constantFrom('in', 'cm', 'mm')),
    })
    .map(({ base, bands, rowsAt, girth, byHand, notes, oddEnd, unit }) => {
      const last = bands.reduce((sum, { rows }) => sum + rows, 0);
      const rows = new Set(rowsAt.map((row) => 1 + (row % last)));
      return {
        format: 'girthline',
        version: 1,
        name: 'Any basket',
        base,
        bands,
        girthLine: {
          points: [...rows].map((row, i) => ({ row, girth: girth + 10 * i })),
          ...(byHand === null ? {} : { rows: { [1 + (byHand % last)]: girth } }),
        },
        ...(notes === null ? {} : { notes }),
        ...(oddEnd === null ? {} : { oddEnd: { kind: oddEnd } }),
        ...(unit === null ? {} : { display: { unit } }),
      };
    });
}

/** Any plan that is allowed. */
export const anyPlan = anyDocument.map((document): Plan => {
  const reading = checkPlan(document, 'any');
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  return reading.plan;
});
