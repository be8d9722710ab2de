import { demoWords } from '#words/demo.ts';
import type { PlanDocument } from '../schema.ts';

/** Round from the hub to the rim, opening all the way: eight spokes and one half, 17 ends. */
export const plumBowl = {
  format: 'girthline',
  version: 1,
  ...demoWords.plumBowl,
  display: { unit: 'cm' },
  base: {
    kind: 'wheel',
    spokes: 8,
    stake: { section: 'flat', width: 15.9, thickness: 1 },
    hub: 60,
    diameter: 150,
    upsett: 'creased',
    centreLift: 6,
  },
  oddEnd: { kind: 'added' },
  bands: [
    {
      rows: 13,
      weave: 'continuous',
      weaver: { section: 'flat-oval', width: 4.8, thickness: 2 },
      colour: 'natural',
    },
    {
      rows: 3,
      weave: 'continuous',
      weaver: { section: 'flat-oval', width: 4.8, thickness: 2 },
      colour: 'plum',
    },
    {
      rows: 4,
      weave: 'continuous',
      weaver: { section: 'flat-oval', width: 4.8, thickness: 2 },
      colour: 'natural',
    },
  ],
  girthLine: {
    points: [
      { row: 10, girth: 540 },
      { row: 20, girth: 610 },
    ],
  },
} as const satisfies PlanDocument;
