/** Designs at random, small enough that thousands of them can be settled. */
import fc from 'fast-check';
import { baseGirth } from '../../../src/plan/baseSize.ts';
import type { Base, Plan, PlanDocument } from '../../../src/plan/schema.ts';
import { planOf } from '../../plan/plans.ts';

const tenths = (least: number, most: number) =>
  fc.integer({ min: Math.ceil(least * 10), max: Math.floor(most * 10) }).map((n) => n / 10);

const share = (least: number, most: number) =>
  fc.integer({ min: Math.round(least * 100), max: Math.round(most * 100) }).map((n) => n / 100);

/** A strand of `widths` mm, thinner than it is wide. */
const strandOf = (least: number, most: number) =>
  fc
    .record({
      section: fc.constantFrom('flat', 'flat-oval', 'half-round', 'round'),
      width: tenths(least, most),
      flatness: share(0.08, 0.5),
    })
    .map(({ section, width, flatness }) => ({
      section,
      width,
      thickness: section === 'round' ? width : Math.max(0.3, Math.round(width * flatness * 10) / 10),
    }));

const corners = (rows: number) =>
  fc.record({
    kind: fc.constantFrom('pinned', 'fanned', 'square'),
    rows: fc.integer({ min: 0, max: rows }),
    hold: fc.constantFrom(0, 0, 0.3, 0.7, 1),
    holdRows: fc.integer({ min: 0, max: rows + 5 }),
  });

const band = fc.record({
  rows: fc.integer({ min: 1, max: 5 }),
  weave: fc.constantFrom('continuous', 'rounds', 'twined', 'chased', 'twill'),
  weaver: strandOf(2, 10),
  packing: fc.constantFrom(0.8, 1, 1, 1.05, 1.6),
});

/** What a design is made from, girth line aside. */
const ingredients = fc.record({
  lengthwise: fc.integer({ min: 2, max: 6 }),
  crosswise: fc.integer({ min: 2, max: 7 }),
  stake: strandOf(4, 20),
  gaps: fc.record({ lengthwise: tenths(0, 14), crosswise: tenths(0, 14) }),
  corners: corners(10),
  upsett: fc.constantFrom('rolled', 'creased'),
  lift: fc.constantFrom(0, 0, 0.05, 0.15, 0.3, 0.5),
  oddEnd: fc.constantFrom('none', 'split', 'added'),
  oddEndAt: fc.constantFrom('middle of a long side', 'middle of a short side', 'corner'),
  bands: fc.array(band, { minLength: 1, maxLength: 3 }),
  set: fc.constantFrom(0, 0.3, 0.5, 0.8, 0.95),
});

type Ingredients = typeof ingredients extends fc.Arbitrary<infer T> ? T : never;

const steps = fc.array(
  fc.record({ rows: fc.integer({ min: 1, max: 6 }), slope: share(-1, 1) }),
  { minLength: 1, maxLength: 4 },
);

/**
 * Any mat basket whose girth changes by no more than `most` of what a wall that lies flat takes
 * (2π·p a row), and never falls under half the base's girth.
 */
export function planOfSlope(most: number): fc.Arbitrary<Plan> {
  return fc.tuple(ingredients, steps).map(([made, slopes]) => {
    const points = gentlePoints(made, slopes, most);
    return planOf(documentOf(made, { points }));
  });
}

/** Any mat basket with any girth line that a document may hold, most of them impossible to weave. */
export const absurdPlan: fc.Arbitrary<Plan> = fc
  .tuple(
    ingredients,
    fc.uniqueArray(fc.record({ row: fc.nat(), girth: tenths(20, 2000) }), {
      minLength: 1,
      maxLength: 4,
      selector: ({ row }) => row % 4,
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
  const base = baseGirth(baseOf(made) as Base);
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

function baseOf({ stake, gaps, corners: { kind, rows, ...hold }, lift, ...made }: Ingredients) {
  const length = made.crosswise * stake.width + (made.crosswise - 1) * gaps.crosswise;
  const width = made.lengthwise * stake.width + (made.lengthwise - 1) * gaps.lengthwise;
  return {
    kind: 'mat',
    lengthwise: made.lengthwise,
    crosswise: made.crosswise,
    stake,
    gaps,
    corners: { kind, rows: kind === 'square' ? 0 : rows, ...hold },
    upsett: made.upsett,
    centreLift: lift * Math.min(length, width),
  };
}

function documentOf(made: Ingredients, girthLine: PlanDocument['girthLine']): PlanDocument {
  return {
    format: 'girthline',
    version: 1,
    name: 'Any basket',
    base: baseOf(made),
    oddEnd: { kind: made.oddEnd, at: made.oddEndAt },
    bands: made.bands,
    set: { stakes: made.set },
    girthLine,
  } as PlanDocument;
}
