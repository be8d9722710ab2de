import { demoWords } from '#words/demo.ts';
import type { PlanDocument } from '../schema.ts';

/** The first basket that a newcomer sees: oblong, on four feet, with a belly and one split stake. */
export const orchardTrug = {
  format: 'girthline',
  version: 1,
  ...demoWords.orchardTrug,
  base: {
    kind: 'mat',
    lengthwise: 5,
    crosswise: 9,
    stake: { section: 'flat', width: 15.9, thickness: 1.2 },
    gap: 9.5,
    corners: { kind: 'pinned', rows: 8 },
    upsett: 'rolled',
    centreLift: 14,
  },
  oddEnd: { kind: 'split', at: 'middle of a long side' },
  bands: [
    {
      rows: 20,
      weave: 'continuous',
      weaver: { section: 'flat-oval', width: 4.8, thickness: 2 },
      packing: 1.04,
      colour: 'natural',
    },
    {
      rows: 4,
      weave: 'continuous',
      weaver: { section: 'flat-oval', width: 6.4, thickness: 2.2 },
      packing: 1.04,
      colour: 'walnut',
    },
    {
      rows: 8,
      weave: 'continuous',
      weaver: { section: 'flat-oval', width: 4.8, thickness: 2 },
      packing: 1.04,
      colour: 'natural',
    },
  ],
  set: { stakes: 0.5 },
  girthLine: {
    points: [
      { row: 10, girth: 674 },
      { row: 20, girth: 735 },
      { row: 32, girth: 664 },
    ],
  },
  rim: {
    hoop: { section: 'flat-oval', width: 15.9, thickness: 3 },
    lap: 89,
    filler: true,
    lasher: { width: 4.4 },
  },
  handle: {
    kind: 'swing',
    rise: 165,
    ear: { height: 95, spread: 28 },
    bow: { width: 15.9, thickness: 3.2 },
    wrap: { width: 4.8 },
  },
} as const satisfies PlanDocument;
