import { demoWords } from '#words/demo.ts';
import type { PlanDocument } from '../schema.ts';

/** Wide and shallow, its sides leaning out all the way. */
export const dryingTray = {
  format: 'girthline',
  version: 1,
  ...demoWords.dryingTray,
  display: { unit: 'cm' },
  base: {
    kind: 'mat',
    lengthwise: 9,
    crosswise: 13,
    stake: { section: 'flat', width: 15.9, thickness: 1.3 },
    gap: 6.4,
    corners: { kind: 'square' },
    upsett: 'rolled',
    centreLift: 0,
  },
  bands: [
    {
      rows: 9,
      weave: 'chased',
      weaver: { section: 'flat', width: 9.5, thickness: 1.2 },
      colour: 'madder',
    },
  ],
  set: { stakes: 0.6 },
  girthLine: { points: [{ row: 9, girth: 1190 }] },
} as const satisfies PlanDocument;
