import { demoWords } from '#words/demo.ts';
import type { PlanDocument } from '../schema.ts';

/** A round belly carried high, and a shoulder over it. */
export const russetJar = {
  format: 'girthline',
  version: 1,
  ...demoWords.russetJar,
  base: {
    kind: 'mat',
    lengthwise: 7,
    crosswise: 7,
    stake: { section: 'flat', width: 12.7, thickness: 1.2 },
    gap: 9.5,
    corners: { kind: 'pinned', rows: 4 },
    upsett: 'rolled',
    centreLift: 10,
  },
  oddEnd: { kind: 'split', at: 'middle of a short side' },
  bands: [
    {
      rows: 2,
      weave: 'twined',
      weaver: { section: 'round', width: 1.75, thickness: 1.75 },
      colour: 'natural',
    },
    {
      rows: 20,
      weave: 'continuous',
      weaver: { section: 'flat-oval', width: 4.8, thickness: 2 },
      colour: 'natural',
    },
    {
      rows: 14,
      weave: 'continuous',
      weaver: { section: 'flat-oval', width: 4.8, thickness: 2 },
      colour: 'walnut',
    },
  ],
  set: { stakes: 0.6 },
  girthLine: {
    points: [
      { row: 4, girth: 600 },
      { row: 22, girth: 762 },
      { row: 36, girth: 606 },
    ],
  },
} as const satisfies PlanDocument;
