import type { PlanDocument } from '../../../src/plan/schema.ts';

/** Millimetres in so many inches. */
export function inches(count: number): number {
  return 25.4 * count;
}

/** An upright basket of the trade facts: 5 and 9 stakes of 1/2 in with 1/4 in gaps, 32 packed rows. */
export const oblong = {
  format: 'girthline',
  version: 1,
  name: 'Oblong of the trade facts',
  base: {
    kind: 'mat',
    lengthwise: 5,
    crosswise: 9,
    stake: { section: 'flat', width: 12.7, thickness: 1.2 },
    gap: 6.35,
    corners: { kind: 'pinned', rows: 8 },
    upsett: 'rolled',
    centreLift: 0,
  },
  oddEnd: { kind: 'split', at: 'middle of a long side' },
  bands: [
    {
      rows: 32,
      weave: 'continuous',
      weaver: { section: 'flat-oval', width: (25.4 * 11) / 64, thickness: 2 },
      packing: 1,
    },
  ],
  girthLine: { points: [{ row: 32, girth: 560 }] },
  allowances: { tuck: 69.85, splice: 4, taper: 250, waste: 0.1, usableStrand: 2400 },
} as const satisfies PlanDocument;

/** Seven and seven stakes of 5/8 in trued to 7 × 7 in (a published napkin basket), upright. */
export const napkin = {
  format: 'girthline',
  version: 1,
  name: 'Seven by seven',
  base: {
    kind: 'mat',
    lengthwise: 7,
    crosswise: 7,
    stake: { section: 'flat', width: 15.875, thickness: 1.2 },
    gap: (25.4 * (7 - 7 * 0.625)) / 6,
    corners: { kind: 'square' },
    upsett: 'creased',
    centreLift: 0,
  },
  bands: [
    ...[0, 1, 2].flatMap(
      () =>
        [
          {
            rows: 1,
            weave: 'rounds',
            weaver: { section: 'flat', width: 12.7, thickness: 1.2 },
            packing: 1,
          },
          {
            rows: 1,
            weave: 'rounds',
            weaver: { section: 'flat-oval', width: 4.37, thickness: 2 },
            packing: 1,
          },
        ] as const,
    ),
    {
      rows: 1,
      weave: 'rounds',
      weaver: { section: 'flat', width: 12.7, thickness: 1.2 },
      packing: 1,
    },
    {
      rows: 1,
      weave: 'rounds',
      weaver: { section: 'flat', width: 9.5, thickness: 1.2 },
      packing: 1,
    },
  ],
  girthLine: { points: [{ row: 8, girth: 25.4 * 28 }] },
  allowances: { tuck: 76.2, splice: 4, taper: 250, waste: 0.1, usableStrand: 2400 },
} as const satisfies PlanDocument;
