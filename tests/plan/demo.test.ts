import { expect, test } from 'vitest';
import { girthLine } from '../../src/model/girth/girthLine.ts';
import { baseGirth, baseSize } from '../../src/plan/baseSize.ts';
import { endCount, rowCount, rowPitch } from '../../src/plan/counts.ts';
import { demos } from '../../src/plan/demo/demos.ts';
import { readPlan, writePlan } from '../../src/plan/read.ts';

const [trug] = demos;

test.each(demos)('$title is a plan that is read back equal', ({ plan }) => {
  expect(readPlan(writePlan(plan), 'demo')).toEqual({ ok: true, plan });
});

test('no two demos have one id', () => {
  expect(new Set(demos.map(({ id }) => id)).size).toBe(demos.length);
});

test('every kind of base but the board, and every weave but the twill, is in a demo', () => {
  const kinds = new Set(demos.map(({ plan }) => plan.base.kind));
  const woven = new Set(demos.flatMap(({ plan }) => plan.bands.map(({ weave }) => weave)));
  expect([...kinds].sort()).toEqual(['mat', 'oval', 'wheel']);
  expect([...woven].sort()).toEqual(['chased', 'continuous', 'rounds', 'twined']);
});

test('the plum bowl has 17 ends', () => {
  const bowl = demos.find(({ id }) => id === 'plum-bowl');
  expect(bowl && endCount(bowl.plan)).toBe(17);
});

test('the first demo has 29 ends and 32 rows', () => {
  expect(endCount(trug.plan)).toBe(29);
  expect(rowCount(trug.plan)).toBe(32);
});

test('the first demo has a base of 8 5/8 × 4 5/8 in', () => {
  const { length, width } = baseSize(trug.plan.base);
  expect(Math.round((length / 25.4) * 16)).toBe(8 * 16 + 10);
  expect(Math.round((width / 25.4) * 16)).toBe(4 * 16 + 10);
});

test.each(demos)('$title has a count of ends that suits its weaves', ({ plan }) => {
  const isOdd = endCount(plan) % 2 === 1;
  for (const { weave } of plan.bands) {
    if (weave === 'continuous') expect(isOdd).toBe(true);
    if (weave === 'rounds' || weave === 'chased') expect(isOdd).toBe(false);
  }
});

test.each(demos)('$title changes no row by more than 0.6 · 2π pitches', ({ plan }) => {
  const girths = girthLine(plan);
  for (let row = 1; row < girths.length; row++) {
    const change = Math.abs((girths[row] ?? 0) - (girths[row - 1] ?? 0));
    expect(change).toBeLessThan(0.6 * 2 * Math.PI * rowPitch(plan, row));
  }
});

test('the label pot has one girth from base to rim', () => {
  const plan = demos[1]?.plan;
  for (const girth of plan ? girthLine(plan) : []) {
    expect(girth).toBeCloseTo(plan ? baseGirth(plan.base) : Number.NaN, 6);
  }
});
