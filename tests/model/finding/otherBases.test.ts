import { expect, test } from 'vitest';
import { findings } from '../../../src/model/finding/findings.ts';
import { rocks } from '../../../src/model/finding/rocks.ts';
import { stakeGaps } from '../../../src/model/finding/stakeGaps.ts';
import { settleBasket } from '../../../src/model/settleBasket.ts';
import { baseKinds } from '../../../src/plan/base.ts';
import { baseOfKind } from '../../../src/plan/baseOfKind.ts';
import { demos } from '../../../src/plan/demo/demos.ts';
import { changeBase } from '../../../src/plan/rescale.ts';
import { netOf, readingOf, squarePlan } from '../readings.ts';

const plan = squarePlan();
const on = (kind: (typeof baseKinds)[number]) => changeBase(plan, baseOfKind(kind, plan.base));

/** A reading of the plan on another base whose middle hangs 8 mm below its edge. */
function hanging(kind: 'wheel' | 'board') {
  const other = on(kind);
  const net = netOf(other);
  const shape = Float64Array.from(net.start);
  for (let node = 0; node < net.baseNodeCount; node++) {
    const r = Math.hypot(shape[3 * node] ?? 0, shape[3 * node + 1] ?? 0);
    shape[3 * node + 2] = -8 * Math.max(0, 1 - r / 50);
  }
  return readingOf(other, shape);
}

test('a wheel that hangs in the middle rocks, below its edge and not its corners', () => {
  const [finding] = rocks(hanging('wheel'));
  expect(finding).toMatchObject({ kind: 'rocks', severity: 'warn' });
  expect(finding?.text).toContain('below its edge');
  expect(finding?.text).not.toContain('corner');
});

test('a board does not rock', () => {
  expect(rocks(hanging('board'))).toEqual([]);
});

test('round spokes may stand 1 1/2 in apart, and not further', () => {
  const stake = { section: 'round', width: 2.75, thickness: 2.75 } as const;
  const wheel = on('wheel');
  const reading = readingOf({ ...wheel, base: { ...wheel.base, stake } });
  const apart = (gapMost: number) =>
    stakeGaps({
      ...reading,
      rows: reading.rows.map((row) => ({ ...row, gapLeast: 5, gapMost })),
    });
  expect(apart(38)).toEqual([]);
  expect(apart(39)).toMatchObject([{ kind: 'stakes-far-apart', value: 39, limit: 38.1 }]);
});

test.each(baseKinds)('what is said of a basket on a %s has no other base in it', (kind) => {
  const corners = kind === 'mat' || kind === 'oval';
  for (const { text } of findings(readingOf(on(kind)))) {
    if (!corners && kind === 'wheel') expect(text).not.toContain('corner');
    expect(text).not.toMatch(/NaN|undefined|Infinity/);
  }
});

test.each(baseKinds)('the first demo on a %s can still be woven', (kind) => {
  const first = demos[0].plan;
  const base = baseOfKind(kind, first.base);
  const found = settleBasket(changeBase(first, base)).findings;
  const grave = found.filter(
    ({ severity, kind: what }) => severity === 'stop' && what !== 'count-of-ends',
  );
  expect(grave).toEqual([]);
});
