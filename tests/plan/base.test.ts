import fc from 'fast-check';
import { expect, test } from 'vitest';
import { baseGaps, baseGirth, baseSize } from '../../src/plan/baseSize.ts';
import { endCount } from '../../src/plan/counts.ts';
import { anyPlan, planOf, tradeOblong, tradePlan } from './plans.ts';

const inch = 25.4;

test('the oblong plan of the trade has a base of 6 1/2 × 3 1/2 in', () => {
  const { length, width } = baseSize(tradePlan().base);
  expect(length / inch).toBeCloseTo(6.5, 10);
  expect(width / inch).toBeCloseTo(3.5, 10);
});

test('the oblong plan of the trade has a base girth of 20 in', () => {
  expect(baseGirth(tradePlan().base) / inch).toBeCloseTo(20, 10);
});

test('both cuts of the oblong plan leave the same 8 1/4 in beyond the base', () => {
  const { length, width } = baseSize(tradePlan().base);
  expect((23 - length / inch) / 2).toBeCloseTo(8.25, 10);
  expect((20 - width / inch) / 2).toBeCloseTo(8.25, 10);
});

test('the oblong plan of the trade has 29 ends, one stake being split', () => {
  expect(endCount(tradePlan())).toBe(29);
});

test('an added end counts one, and without an odd end the count is even', () => {
  expect(endCount(tradePlan({ oddEnd: { kind: 'added' } }))).toBe(29);
  expect(endCount(tradePlan({ oddEnd: { kind: 'none' } }))).toBe(28);
});

test('five half-inch stakes at half-inch gaps make 4 1/2 in (worked-examples, pattern 13)', () => {
  const { base } = planOf({
    ...tradeOblong,
    base: { ...tradeOblong.base, crosswise: 5, gap: 12.7 },
  });
  expect(baseSize(base).length / inch).toBeCloseTo(4.5, 10);
  expect(baseSize(base).width / inch).toBeCloseTo(4.5, 10);
});

test('with two gaps the crosswise one makes the length', () => {
  const { gap: _, ...rest } = tradeOblong.base;
  const { base } = planOf({
    ...tradeOblong,
    base: { ...rest, gaps: { lengthwise: 0, crosswise: 10 } },
  });
  expect(base.kind === 'mat' && baseGaps(base)).toEqual({ lengthwise: 0, crosswise: 10 });
  expect(baseSize(base)).toEqual({ length: 9 * 12.7 + 80, width: 5 * 12.7 });
});

test('one gap is the same as two equal ones', () => {
  fc.assert(
    fc.property(anyPlan, ({ base }) => {
      fc.pre(base.kind === 'mat');
      const { gap: _, gaps: __, ...rest } = base;
      expect(baseGirth({ ...rest, gaps: baseGaps(base) })).toBe(baseGirth(base));
    }),
  );
});
