import { demoWords } from '#words/demo.ts';
import type { PlanDocument } from '../schema.ts';

/** Square at the table and round at the rim, with one girth from bottom to top. */
export const labelPot = {
  format: 'girthline',
  version: 1,
  ...demoWords.labelPot,
  base: {
    kind: 'mat',
    lengthwise: 7,
    crosswise: 7,
    stake: { section: 'flat', width: 9.5, thickness: 1.2 },
    gap: 6.4,
    corners: { kind: 'square' },
    upsett: 'creased',
    centreLift: 5,
  },
  bands: [
    {
      rows: 20,
      weave: 'rounds',
      weaver: { section: 'flat', width: 6.4, thickness: 1.1 },
      colour: 'natural',
    },
    {
      rows: 3,
      weave: 'rounds',
      weaver: { section: 'flat', width: 6.4, thickness: 1.1 },
      colour: 'indigo',
    },
    {
      rows: 3,
      weave: 'rounds',
      weaver: { section: 'flat', width: 6.4, thickness: 1.1 },
      colour: 'natural',
    },
  ],
  girthLine: { points: [{ row: 26, girth: 419.6 }] },
  rim: {
    hoop: { section: 'flat', width: 9.5, thickness: 1.5 },
    lap: 64,
    filler: true,
    lasher: { width: 3 },
  },
} as const satisfies PlanDocument;
