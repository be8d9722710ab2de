import { expect, test } from 'vitest';
import { sameShape } from '../../src/keep/sameShape.ts';
import { demos } from '../../src/plan/demo/demos.ts';

const plan = demos[0].plan;

test('a plan with another name, other notes or another unit has the same shape', () => {
  expect(sameShape(plan, { ...plan, name: 'Another' })).toBe(true);
  expect(sameShape(plan, { ...plan, notes: 'soak for an hour' })).toBe(true);
  expect(sameShape(plan, { ...plan, display: { unit: 'mm' } })).toBe(true);
});

test('an equal plan of other objects has the same shape', () => {
  expect(sameShape(plan, structuredClone(plan))).toBe(true);
});

test('a plan with another base, girth or tuck has another shape', () => {
  const { base, girthLine, allowances } = plan;
  const moved = girthLine.points.map((point) => ({ ...point, girth: point.girth + 1 }));
  const creased = { ...base, upsett: 'creased' } as const;
  expect(sameShape(plan, { ...plan, base: creased })).toBe(false);
  expect(sameShape(plan, { ...plan, girthLine: { ...girthLine, points: moved } })).toBe(false);
  expect(
    sameShape(plan, { ...plan, allowances: { ...allowances, tuck: allowances.tuck + 1 } }),
  ).toBe(false);
});
