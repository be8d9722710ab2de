/** Designs at random, small enough that thousands of them can be settled. */
import fc from 'fast-check';
import { baseGirth } from '../../../src/plan/baseSize.ts';
import type { Plan, PlanDocument, Strand } from '../../../src/plan/schema.ts';
import { planOf } from '../../plan/plans.ts';
import { anyBase, tenths } from './randomBase.ts';

const share = (least: number, most: number) =>
  fc.integer({ min: Math.round(least * 100), max: Math.round(most * 100) }).map((n) => n / 100);

/** Strands that people weave with: flat stakes of about 1 mm, weavers of at most 3 mm. */
const usualStrands = {
  stake: fc.record({
    section: fc.constantFrom('flat', 'flat-oval'),
    width: tenths(6, 20),
    thickness: tenths(1, 1.6),
  }),
  weaver: fc.oneof(
    fc.record({
      section: fc.constantFrom('flat', 'flat-oval', 'half-round'),
      width: tenths(4, 8),
      thickness: tenths(1, 2.2),
    }),
    tenths(1.75, 3).map((width) => ({ section: 'round', width, thickness: width })),
  ),
};

const anyStrand = fc.record({
  section: fc.constantFrom('flat', 'flat-oval', 'half-round', 'round'),
  width: tenths(2, 20),
  thickness: tenths(0.3, 8),
});

/** Any strands that a document may hold, strips of paper on rods of iron among them. */
const anyStrands = { stake: anyStrand, weaver: anyStrand };

type Strands = typeof usualStrands | typeof anyStrands;

function ingredients({ stake, weaver }: Strands) {
  const band = fc.record({
    rows: fc.integer({ min: 1, max: 4 }),
    weave: fc.constantFrom('continuous', 'rounds', 'twined', 'chased', 'twill'),
    weaver,
    packing: fc.constantFrom(0.8, 1, 1, 1.05, 1.6),
  });
  return fc.record({
    base: anyBase(stake as fc.Arbitrary<Strand>),
    oddEnd: fc.constantFrom('none', 'none', 'split', 'added'),
    oddEndAt: fc.constantFrom('middle of a long side', 'middle of a short side', 'corner'),
    bands: fc.array(band, { minLength: 1, maxLength: 2 }),
    set: fc.constantFrom(0, 0.3, 0.5, 0.8, 0.95),
  });
}

type Ingredients = ReturnType<typeof ingredients> extends fc.Arbitrary<infer T> ? T : never;

const steps = fc.array(fc.record({ rows: fc.integer({ min: 1, max: 6 }), slope: share(-1, 1) }), {
  minLength: 1,
  maxLength: 3,
});

/**
 * A basket of usual strands whose girth changes by no more than the share `most` of what a wall
 * that lies flat takes (2π·p a row), and never falls under half the base's girth.
 */
export function planOfSlope(most: number): fc.Arbitrary<Plan> {
  return fc
    .tuple(ingredients(usualStrands), steps)
    .map(([made, slopes]) =>
      planOf(documentOf(made, { points: gentlePoints(made, slopes, most) })),
    );
}

/** Any basket with any girth line that a document may hold, most of them impossible to weave. */
export const absurdPlan: fc.Arbitrary<Plan> = fc
  .tuple(
    ingredients(anyStrands),
    fc.array(fc.record({ row: fc.nat(), girth: tenths(20, 2000) }), {
      minLength: 1,
      maxLength: 4,
    }),
    fc.option(fc.record({ row: fc.nat(), girth: fc.constantFrom(20, 300, 10_000) })),
  )
  .map(([made, wild, byHand]) => {
    const last = rowsOf(made);
    const rows = new Map(wild.map(({ row, girth }) => [1 + (row % last), girth]));
    const points = [...rows].map(([row, girth]) => ({ row, girth }));
    const single = byHand ? { [1 + (byHand.row % last)]: byHand.girth } : {};
    return planOf(documentOf(made, { points, rows: single }));
  });

function rowsOf({ bands }: Pick<Ingredients, 'bands'>): number {
  return bands.reduce((sum, { rows }) => sum + rows, 0);
}

function gentlePoints(
  made: Ingredients,
  slopes: readonly { rows: number; slope: number }[],
  most: number,
) {
  const last = rowsOf(made);
  const pitch = Math.min(...made.bands.map(({ weaver, packing }) => weaver.width * packing));
  const base = baseGirth(made.base);
  const points: { row: number; girth: number }[] = [];
  let row = 0;
  let girth = base;
  for (const { rows, slope } of slopes) {
    if (row >= last) break;
    const to = Math.min(last, row + rows);
    // A monotone cubic may rise 1.5 times as fast as its chord.
    girth += ((to - row) * slope * most * 2 * Math.PI * pitch) / 1.5;
    girth = Math.max(0.5 * base, 20, girth);
    points.push({ row: to, girth });
    row = to;
  }
  return points;
}

function documentOf(made: Ingredients, girthLine: PlanDocument['girthLine']): PlanDocument {
  return {
    format: 'girthline',
    version: 1,
    name: 'Any basket',
    base: made.base,
    oddEnd: { kind: made.oddEnd, at: made.oddEndAt },
    bands: made.bands,
    set: { stakes: made.set },
    girthLine,
  } as PlanDocument;
}

/** Baskets of the size that people weave: 4 … 9 by 4 … 13 stakes of about 1/2 in, 8 … 32 rows. */
export const workshopPlan: fc.Arbitrary<Plan> = fc
  .record({
    lengthwise: fc.integer({ min: 4, max: 9 }),
    crosswise: fc.integer({ min: 4, max: 13 }),
    width: tenths(9, 16),
    thickness: tenths(0.9, 1.5),
    gap: tenths(4, 10),
    kind: fc.constantFrom('pinned', 'square', 'fanned'),
    cornerRows: fc.integer({ min: 0, max: 8 }),
    hold: fc.constantFrom(0, 0, 0.5),
    upsett: fc.constantFrom('rolled', 'creased'),
    lift: fc.constantFrom(0, 0.08, 0.15),
    oddEnd: fc.constantFrom('none', 'split', 'added'),
    rows: fc.integer({ min: 8, max: 32 }),
    weaver: fc.record({
      section: fc.constant('flat-oval'),
      width: tenths(3, 7),
      thickness: tenths(1.2, 2.4),
    }),
    set: fc.constantFrom(0, 0.3, 0.5, 0.7),
    slopes: fc.tuple(share(-0.3, 0.4), share(-0.5, 0.3)),
  })
  .map(({ lengthwise, crosswise, width, thickness, gap, kind, cornerRows, lift, ...made }) => {
    const size = (count: number) => count * width + (count - 1) * gap;
    const girth = 2 * (size(lengthwise) + size(crosswise));
    const middle = Math.ceil(made.rows / 2);
    const flat = (2 * Math.PI * made.weaver.width) / 1.5;
    const belly = girth + made.slopes[0] * flat * middle;
    const rim = belly + made.slopes[1] * flat * (made.rows - middle);
    return planOf({
      format: 'girthline',
      version: 1,
      name: 'Workshop basket',
      base: {
        kind: 'mat',
        lengthwise,
        crosswise,
        stake: { section: 'flat', width, thickness },
        gap,
        corners: {
          kind,
          rows: kind === 'square' ? 0 : cornerRows,
          hold: made.hold,
          holdRows: 12,
        },
        upsett: made.upsett,
        centreLift: lift * Math.min(size(lengthwise), size(crosswise)),
      },
      oddEnd: { kind: made.oddEnd },
      bands: [{ rows: made.rows, weave: 'rounds', weaver: made.weaver }],
      set: { stakes: made.set },
      girthLine: {
        points: [
          { row: middle, girth: Math.max(girth / 2, belly) },
          { row: made.rows, girth: Math.max(girth / 2, rim) },
        ],
      },
    } as PlanDocument);
  });
