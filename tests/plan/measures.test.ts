import { expect, test } from 'vitest';
import { measuresOf, withMeasures } from '../../src/plan/measures.ts';
import { readPlan, writePlan } from '../../src/plan/read.ts';
import { changeBands } from '../../src/plan/rescale.ts';
import type { Band } from '../../src/plan/schema.ts';
import { tradePlan } from './plans.ts';

const plan = tradePlan({});
const measures = {
  girths: { 9: 541, 30: 520 },
  across: { 9: { length: 240, width: 210.5 }, 30: { width: 160 } },
};

test('what was measured is written and read again', () => {
  const measured = withMeasures(plan, measures);
  const reading = readPlan(writePlan(measured), 'trug');
  expect(reading.ok && measuresOf(reading.plan)).toEqual(measures);
});

test('a plan without lengths and widths says nothing of them, before and after', () => {
  expect(writePlan(plan)).not.toContain('measuredAcross');
  const back = withMeasures(withMeasures(plan, measures), { girths: {}, across: {} });
  expect(writePlan(back)).toBe(writePlan(plan));
  expect(withMeasures(plan, measuresOf(plan))).toBe(plan);
});

test('with fewer rows the measures of those that are gone go too', () => {
  const bands = [{ ...(plan.bands[0] as Band), rows: 16 }];
  const { measured, measuredAcross } = changeBands(withMeasures(plan, measures), bands);
  expect({ measured, measuredAcross }).toEqual({
    measured: { 9: 541 },
    measuredAcross: { 9: { length: 240, width: 210.5 } },
  });
});

test.each([
  [{ 40: { length: 240 } }, /measuredAcross\.40: found row 40, allowed is a row from 1 to 32/],
  [{ 9: {} }, /measuredAcross\.9: .*a length, a width, or both/],
  [
    { 9: { length: 2 } },
    /measuredAcross\.9\.length: found 2, allowed is a length from 5 to 5000 mm/,
  ],
  [{ 9: { depth: 20 } }, /measuredAcross\.9\.depth: /],
  [{ 9: 240 }, /measuredAcross\.9: found 240/],
  [{ first: { length: 240 } }, /measuredAcross\.first: .*a row number as its key/],
  [[], /measuredAcross: .*an object of sizes by row/],
])('measuredAcross of %j is refused with its path', (measuredAcross, refusal) => {
  const reading = readPlan(JSON.stringify({ ...plan, measuredAcross }), 'trug');
  if (reading.ok) throw new Error('it was read');
  const lines = reading.problems.map(
    ({ path, found, allowed }) => `${path}: found ${found}, allowed is ${allowed}`,
  );
  expect(lines.join('\n')).toMatch(refusal);
});
