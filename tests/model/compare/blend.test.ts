import fc from 'fast-check';
import { expect, test } from 'vitest';
import { blend } from '../../../src/model/compare/blend.ts';
import { girthLine } from '../../../src/model/girth/girthLine.ts';
import { setRowByHand } from '../../../src/plan/edit.ts';
import { checkPlan } from '../../../src/plan/read.ts';
import { anyPlan } from '../../plan/plans.ts';
import { flared, jar, trug } from './baskets.ts';

const somePlan = fc.oneof(anyPlan, fc.constantFrom(trug, flared, jar));
const anyShare = fc.oneof(
  fc.double({ min: 0, max: 1, noNaN: true }),
  fc.constantFrom(0, 1, -3, 7, Number.NaN),
);

test('the blend of any two plans is a valid plan', () => {
  fc.assert(
    fc.property(somePlan, somePlan, anyShare, (a, b, share) => {
      const reading = checkPlan(blend(a, b, share), 'blend');
      expect(reading.ok ? [] : reading.problems).toEqual([]);
    }),
    { numRuns: 300 },
  );
});

test('at one end the blend has the first girth line, at the other the second', () => {
  expect(girthLine(blend(trug, flared, 0))).toEqual(girthLine(trug));
  expect(girthLine(blend(trug, flared, 1))).toEqual(girthLine(flared));
});

test('every row of the blend lies between both lines, within half a millimetre of their mean', () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 1, noNaN: true }), (share) => {
      const made = girthLine(blend(trug, flared, share));
      const [a, b] = [girthLine(trug), girthLine(flared)];
      for (let row = 1; row < made.length; row += 1) {
        const [one, other] = [a[row] ?? 0, b[row] ?? 0];
        expect(Math.abs((made[row] ?? 0) - one - share * (other - one))).toBeLessThanOrEqual(
          0.5001,
        );
      }
    }),
    { numRuns: 60 },
  );
});

test('a plan of other rows and base is read at the same share of the wall, in proportion', () => {
  const made = girthLine(blend(trug, jar, 1));
  const factor = (girthLine(trug)[0] ?? 0) / (girthLine(jar)[0] ?? 1);
  const line = girthLine(jar).map((girth) => factor * girth);
  expect(made[0]).toBeCloseTo(line[0] ?? 0, 6);
  expect(made).toHaveLength(33);
  expect(made[32]).toBeCloseTo(line[36] ?? 0, 6);
  expect(Math.abs((made[16] ?? 0) - (line[18] ?? 0))).toBeLessThan(0.51);
});

test('a row set by hand in one plan is set by hand in the blend, as far out as the share says', () => {
  const byHand = setRowByHand(flared, 20, 900);
  const smooth = girthLine(trug)[20] ?? 0;
  expect(blend(trug, byHand, 0.25).girthLine.rows).toEqual({ 20: smooth + 0.25 * (900 - smooth) });
  expect(blend(trug, byHand, 0).girthLine.rows).toEqual({});
  expect(blend(trug, byHand, 1).girthLine.rows).toEqual({ 20: 900 });
});
