/**
 * An oblong plan of the trade (common practice, no source), as check values: 5 lengthwise and 9 crosswise
 * flat stakes of 1/2 in with 1/4 in gaps, cut at 23 and 20 in; 29 ends with one stake split; 32 rows of
 * 11/64 in flat oval; corners pinned for 8 rows, the sides come up from row 10, a slight pull from row 12.
 */
import { describe, expect, test } from 'vitest';
import { settleBasket } from '../../src/model/settleBasket.ts';
import { planOf, tradeOblong } from '../plan/plans.ts';

const inch = 25.4;

/** Packed tight, with the 2 3/4 in to tuck that are left, and a rim a little under the base's girth. */
const packed = planOf({
  ...tradeOblong,
  bands: [{ ...tradeOblong.bands[0], packing: 1 }],
  girthLine: {
    points: [
      { row: 12, girth: 21.5 * inch },
      { row: 32, girth: 21 * inch },
    ],
  },
});
const plan = { ...packed, allowances: { ...packed.allowances, tuck: 2.75 * inch } };

describe('the oblong plan of the trade', () => {
  const { summary, net, rows, stakes, cutList, findings, settling } = settleBasket(plan);

  test('has a base of 6 1/2 by 3 1/2 in, 20 in round', () => {
    expect(summary.baseLength).toBeCloseTo(6.5 * inch, 6);
    expect(summary.baseWidth).toBeCloseTo(3.5 * inch, 6);
    expect(summary.baseGirth).toBeCloseTo(20 * inch, 6);
  });

  test('has 29 ends and 32 rows', () => {
    expect(summary.ends).toBe(29);
    expect(net.ends).toHaveLength(29);
    expect(rows).toHaveLength(32);
  });

  test('has about 5 1/2 in of wall along a stake', () => {
    expect(rows.at(-1)?.wall).toBeCloseTo(5.5 * inch, 6);
  });

  test('needs lengthwise stakes of 23 in and crosswise ones of 20 in, to the eighth', () => {
    const cut = (part: string) =>
      cutList.filter((line) => line.part.includes(part)).map(({ length }) => length / inch);
    const eighth = 1 / 8 + 1e-9;
    expect(cut('lengthwise').length).toBeGreaterThan(0);
    for (const length of cut('lengthwise')) expect(Math.abs(length - 23)).toBeLessThan(eighth);
    for (const length of cut('crosswise')) expect(Math.abs(length - 20)).toBeLessThan(eighth);
  });

  test('leaves 8 1/4 in of every stake beyond the base', () => {
    for (const { side, lengthNeeded } of stakes) {
      const base = side === 'east' || side === 'west' ? 6.5 : 3.5;
      expect(Math.abs(lengthNeeded / inch - base / 2 - 8.25)).toBeLessThan(1 / 8);
    }
  });

  test('settles to girths that a tape confirms, on four feet', () => {
    expect(settling.converged).toBe(true);
    expect(summary.worstGirthError).toBeLessThan(1e-3);
    expect(summary.feet).toBe(4);
    expect(findings.filter(({ severity }) => severity === 'stop')).toEqual([]);
  });
});
