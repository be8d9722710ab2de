import fc from 'fast-check';
import { expect, test } from 'vitest';
import { baseKinds } from '../../src/plan/base.ts';
import { baseOfKind } from '../../src/plan/baseOfKind.ts';
import { baseGirth } from '../../src/plan/baseSize.ts';
import { baseEnds } from '../../src/plan/counts.ts';
import { demos } from '../../src/plan/demo/demos.ts';
import { checkPlan } from '../../src/plan/read.ts';
import { changeBase } from '../../src/plan/rescale.ts';
import type { Base } from '../../src/plan/schema.ts';
import { anyPlan, planOf, tradeOblong, tradePlan } from './plans.ts';

test('a plan on any base can be put on a base of any other kind, and back again', () => {
  fc.assert(
    fc.property(
      anyPlan,
      fc.array(fc.constantFrom(...baseKinds), { minLength: 1, maxLength: 4 }),
      (start, kinds) => {
        let plan = start;
        for (const kind of kinds) {
          plan = changeBase(plan, baseOfKind(kind, plan.base));
          expect(plan.base.kind).toBe(kind);
          expect(checkPlan(plan, 'changed')).toEqual({ ok: true, plan });
        }
      },
    ),
    { numRuns: 1000 },
  );
});

const stake = { section: 'flat', width: 60, thickness: 1 } as const;
const hair = { section: 'round', width: 0.5, thickness: 0.5 } as const;
const upsett = 'rolled' as const;
const corners = { kind: 'square', rows: 0, hold: 0, holdRows: 0 } as const;
const flat = { upsett, centreLift: 0 } as const;

/** Bases at the ends of what is allowed. */
const extremes: readonly Base[] = [
  { kind: 'mat', lengthwise: 2, crosswise: 2, stake: hair, gap: 9, corners, ...flat },
  { kind: 'mat', lengthwise: 2, crosswise: 58, stake, gap: 24, corners, ...flat },
  { kind: 'mat', lengthwise: 39, crosswise: 60, stake: hair, gap: 0.5, corners, ...flat },
  { kind: 'wheel', spokes: 2, stake, hub: 0, diameter: 6.4, ...flat },
  { kind: 'wheel', spokes: 2, stake: hair, hub: 0, diameter: 2000, ...flat },
  {
    kind: 'wheel',
    spokes: 60,
    stake,
    hub: 9,
    diameter: 2000,
    added: { ends: 79, at: 20 },
    ...flat,
  },
  { kind: 'board', shape: 'round', length: 2000, thickness: 9, ends: 199, stake, slot: 5, upsett },
  {
    kind: 'board',
    shape: 'rectangle',
    length: 2000,
    width: 5,
    thickness: 9,
    ends: 4,
    stake,
    slot: 5,
    upsett,
  },
];

test.each(extremes)(
  'a base at the end of what is allowed has its like of every kind (%#)',
  (base) => {
    const plan = planOf({ ...tradeOblong, base, oddEnd: { kind: 'split' } });
    for (const kind of baseKinds) {
      const changed = changeBase(plan, baseOfKind(kind, plan.base));
      expect(checkPlan(changed, 'changed')).toEqual({ ok: true, plan: changed });
    }
  },
);

test.each(demos)(
  '$title keeps its girth and about its count of ends on every kind of base',
  ({ plan }) => {
    for (const kind of baseKinds) {
      const base = baseOfKind(kind, plan.base);
      expect(baseGirth(base) / baseGirth(plan.base)).toBeCloseTo(1, 2);
      expect(Math.abs(baseEnds(base) / baseEnds(plan.base) - 1)).toBeLessThan(0.25);
    }
  },
);

test('a base of the kind there is already stays what it is', () => {
  const { base } = tradePlan();
  expect(baseOfKind('mat', base)).toBe(base);
});
