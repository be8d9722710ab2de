import { expect, test } from 'vitest';
import { foundProblem } from '../../src/panel/foundProblem.ts';
import { demos } from '../../src/plan/demo/demos.ts';

const plan = demos[0].plan;

test('a plan that can be has no problem', () => {
  expect(foundProblem(plan)).toBeNull();
});

test('a plan that cannot be says what is allowed and what was found', () => {
  const crowded = { ...plan, base: { ...plan.base, lengthwise: 60, crosswise: 60, gap: 0 } };
  expect(foundProblem(crowded)).toBe('At most 200 ends round the wall; found 241 ends');
});
