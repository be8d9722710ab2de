import { expect, test } from 'vitest';
import { furthestOff } from '../../../src/model/replan/furthestOff.ts';
import { replan } from '../../../src/model/replan/replan.ts';
import { last, most, planned, wovenAt } from './demo.ts';

const aims = { backBy: last, belly: null, rim: null };

test('a wall that was leaving the plan goes on for some rows, and that is told', () => {
  const woven = wovenAt(1, 12).map((girth, row) => girth - Math.max(0, row - 8) * 4);
  const { girths } = replan(planned, woven, most, aims);
  const furthest = furthestOff(planned, girths, 12, 0.75);
  expect(furthest?.row).toBeGreaterThan(12);
  expect(furthest?.off).toBeLessThan(-16.75);
  const off = girths.map((girth, row) => girth - (planned[row] ?? 0));
  expect(furthest?.off).toBe(Math.min(...off));
});

test('a basket on its plan, or one that comes straight back, has nothing to tell', () => {
  const onPlan = replan(planned, wovenAt(1, 12), most, aims);
  expect(furthestOff(planned, onPlan.girths, 12, 0.75)).toBeNull();
  const coming = wovenAt(1, 12).map((girth, row) => girth - Math.max(0, 12 - row) * 2 - 10);
  const straight = replan(planned, coming, most, aims);
  expect(furthestOff(planned, straight.girths, 12, 0.75)).toBeNull();
});
