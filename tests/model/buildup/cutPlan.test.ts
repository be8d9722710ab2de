import { expect, test } from 'vitest';
import { cutPlan, standing } from '../../../src/model/buildup/cutPlan.ts';
import { girthLine } from '../../../src/model/girth/girthLine.ts';
import { settleBasket } from '../../../src/model/settleBasket.ts';
import { endCount, rowCount } from '../../../src/plan/counts.ts';
import { demos } from '../../../src/plan/demo/demos.ts';

const plan = demos[0].plan;

test.each(demos)('the $title cut off at any row keeps the girths of the rows below', ({ plan }) => {
  const whole = girthLine(plan);
  for (const row of [1, 2, rowCount(plan) - 1, rowCount(plan)]) {
    const cut = cutPlan(plan, row);
    expect(rowCount(cut)).toBe(row);
    expect([...girthLine(cut)]).toEqual([...whole.subarray(0, row + 1)]);
    expect(endCount(cut)).toBe(endCount(plan));
  }
});

test('a row that the plan does not have is refused', () => {
  expect(() => cutPlan(plan, 0)).toThrow('row is 0, allowed 1 to 32');
  expect(() => cutPlan(plan, 33)).toThrow('row is 33, allowed 1 to 32');
});

test('what stands on over a row is what is left to weave, and the tuck', () => {
  const pitch = 1.04 * 4.8;
  expect(standing(plan, 32)).toBeCloseTo(pitch / 2 + plan.allowances.tuck, 9);
  expect(standing(plan, 31)).toBeCloseTo(1.5 * pitch + plan.allowances.tuck, 9);
});

test('half a basket settles to its own girths', () => {
  const half = settleBasket(cutPlan(plan, 12));
  expect(half.rows.length).toBe(12);
  expect(half.settling.worstGirthError).toBeLessThan(0.01);
});
