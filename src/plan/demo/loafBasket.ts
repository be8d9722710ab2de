import { demoWords } from '#words/demo.ts';
import type { PlanDocument } from '../schema.ts';

/** A long base with rounded ends, and a fixed handle that holds the sides. */
export const loafBasket = {
  format: 'girthline',
  version: 1,
  ...demoWords.loafBasket,
  base: {
    kind: 'oval',
    lengthwise: 3,
    crosswise: 9,
    stake: { section: 'flat', width: 12.7, thickness: 1.2 },
    gap: 9.5,
    border: 32,
    fanned: 1,
    upsett: 'creased',
    centreLift: 8,
  },
  bands: [
    {
      rows: 14,
      weave: 'chased',
      weaver: { section: 'flat', width: 6.4, thickness: 1.1 },
      colour: 'natural',
    },
    {
      rows: 4,
      weave: 'chased',
      weaver: { section: 'flat', width: 6.4, thickness: 1.1 },
      colour: 'moss',
    },
  ],
  girthLine: { points: [{ row: 18, girth: 710 }] },
  handle: {
    kind: 'fixed',
    across: 'width',
    spread: 125,
    rise: 160,
    bow: { width: 15.9, thickness: 3.2 },
    wrap: { width: 4 },
  },
} as const satisfies PlanDocument;
