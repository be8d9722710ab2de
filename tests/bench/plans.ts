import { demos } from '../../src/plan/demo/demos.ts';
import type { Plan } from '../../src/plan/schema.ts';
import { planSchema } from '../../src/plan/schema.ts';

/** The demo basket: 29 ends, 32 rows. */
export const demoPlan: Plan = demos[0].plan;

/** A large one on a square mat of 24 + 24 stakes: 96 ends, 100 rows, a belly in the middle. */
export const largePlan: Plan = planSchema.parse({
  format: 'girthline',
  version: 1,
  name: 'Large basket of the bench',
  base: {
    kind: 'mat',
    lengthwise: 24,
    crosswise: 24,
    stake: { section: 'flat', width: 9.5, thickness: 1 },
    gap: 6.4,
    corners: { kind: 'square', rows: 0 },
    upsett: 'rolled',
    centreLift: 10,
  },
  bands: [
    {
      rows: 100,
      weave: 'rounds',
      weaver: { section: 'flat-oval', width: 4.4, thickness: 1.6 },
    },
  ],
  girthLine: {
    points: [
      { row: 20, girth: 1560 },
      { row: 60, girth: 1640 },
      { row: 100, girth: 1440 },
    ],
  },
});
