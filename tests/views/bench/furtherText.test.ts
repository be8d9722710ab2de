import { expect, test } from 'vitest';
import { newRecord } from '../../../src/keep/benchRecord.ts';
import { demos } from '../../../src/plan/demo/demos.ts';
import type { BenchWork } from '../../../src/views/bench/benchWork.ts';
import { furtherText } from '../../../src/views/bench/furtherText.ts';

const inch = 25.4;
const rows = 30;
const level = (girth: number) => new Float64Array(rows + 1).fill(girth);

/** Woven to row 12 as planned, with a replan in which row 15 is `off` mm wider than the planned `girth`. */
function wideAt15(girth: number, off: number): BenchWork {
  const girths = level(girth);
  girths[15] = girth + off;
  const read = {
    plan: demos[0].plan,
    record: newRecord('1', 'Basket 1', {}),
    course: { planned: level(girth), replan: { from: 12, girths } },
    over: level(0),
    plannedOver: level(0),
  };
  // all that the sentence is made of
  return read as unknown as BenchWork;
}

test('a way back that first leads away is told with the figures that the table shows', () => {
  expect(furtherText(wideAt15(20 * inch, inch / 16))).toContain(
    'row 15 is 1/16 in wider than planned',
  );
  expect(furtherText(wideAt15(20 * inch, -inch / 8))).toContain(
    'row 15 is 1/8 in tighter than planned',
  );
});

test('one that leads away by less than the figures show is not told as 0 in', () => {
  // 19.980 and 20.016 in, both shown as 20
  expect(furtherText(wideAt15(19.98 * inch, 0.9))).toBeNull();
});
