import { expect, test } from 'vitest';
import { median, withMovedPoint } from '../../src/command/times.ts';
import { demos } from '../../src/plan/demo/demos.ts';

test('the median is the middle value, or the mean of the two middle ones', () => {
  expect(median([9, 1, 5])).toBe(5);
  expect(median([4, 1, 9, 2])).toBe(3);
});

test('the moved point is the middle one, and the plan it was moved in stays as it is', () => {
  const { plan } = demos[0];
  const before = structuredClone(plan);
  const moved = withMovedPoint(plan, 1.01);
  const changes = moved.girthLine.points.map(
    ({ girth }, at) => girth - (plan.girthLine.points[at]?.girth ?? 0),
  );
  expect(changes.filter((change) => change > 0)).toHaveLength(1);
  expect(changes[Math.floor(changes.length / 2)]).toBeGreaterThan(0);
  expect(plan).toEqual(before);
});
