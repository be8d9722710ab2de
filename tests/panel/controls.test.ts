import { expect, test } from 'vitest';
import { bandControls } from '../../src/panel/bandControls.ts';
import { baseControls } from '../../src/panel/baseControls.ts';
import { cornerControls } from '../../src/panel/cornerControls.ts';
import type { PlanEdits } from '../../src/panel/usePlanEdits.ts';
import { displayControls, oddEndControls, setControls } from '../../src/panel/wholeControls.ts';
import { demos } from '../../src/plan/demo/demos.ts';
import { matOf } from '../plan/plans.ts';
import { desk, enter } from './desk.ts';

const base = (edits: PlanEdits) => baseControls(edits.plan().base, 'mm', edits);

test('a wider gap widens the base, and the girth points go along', () => {
  const edits = desk();
  const before = edits.plan().girthLine.points[0]?.girth ?? 0;
  expect(enter(base(edits), 'gap', 19)).toBeNull();
  expect(matOf(edits.plan()).gap).toBe(19);
  expect(edits.plan().girthLine.points[0]?.girth).toBeGreaterThan(before);
});

test('gaps become two and one again without moving the base', () => {
  const edits = desk();
  expect(enter(base(edits), 'gapKind', 'two')).toBeNull();
  expect(matOf(edits.plan()).gaps).toEqual({ lengthwise: 9.5, crosswise: 9.5 });
  expect(Object.keys(base(edits))).toContain('gapCrosswise');
  expect(enter(base(edits), 'gapKind', 'one')).toBeNull();
  expect(edits.plan()).toEqual(demos[0].plan);
});

test('a round strand has its width only, and is as thick as it is wide', () => {
  const edits = desk();
  expect(enter(base(edits), 'section', 'round')).toBeNull();
  expect(Object.keys(base(edits))).not.toContain('thickness');
  expect(enter(base(edits), 'width', 6)).toBeNull();
  expect(edits.plan().base.stake).toEqual({ section: 'round', width: 6, thickness: 6 });
});

test('more stakes than the wall has room for are refused, and the plan stays', () => {
  const edits = desk();
  expect(enter(base(edits), 'lengthwise', 60)).toBeNull();
  const before = edits.plan();
  expect(enter(base(edits), 'crosswise', 60)).toMatch(/found 241 ends/);
  expect(edits.plan()).toBe(before);
});

test('each kind of corner can be chosen from each other', () => {
  const edits = desk();
  for (const kind of ['square', 'fanned', 'pinned', 'fanned', 'square']) {
    const controls = cornerControls(matOf(edits.plan()), 32, edits);
    expect(enter(controls, 'cornerKind', kind)).toBeNull();
    expect(matOf(edits.plan()).corners.kind).toBe(kind);
  }
});

test('the rows of a band are refused beyond the rows that all bands may have', () => {
  const edits = desk();
  const band = edits.plan().bands[0];
  if (!band) throw new Error('the demo has bands');
  const controls = bandControls(band, 0, 'mm', edits);
  expect(enter(controls, 'rows', 300)).toBe('Rows: at most 300 in all bands; found 312');
  expect(enter(controls, 'rows', 30)).toBeNull();
  expect(edits.plan().girthLine.points.at(-1)?.row).toBe(42);
});

test('weave, packing and colour of a band change that band alone', () => {
  const edits = desk();
  const second = edits.plan().bands[1];
  if (!second) throw new Error('the demo has bands');
  const controls = bandControls(second, 1, 'mm', edits);
  enter(controls, 'weave', 'twined');
  enter(controls, 'packing', 1.2);
  enter(controls, 'colour', '#336699');
  expect(edits.plan().bands[1]).toMatchObject({ weave: 'twined', packing: 1.2, colour: '#336699' });
  expect(edits.plan().bands[0]).toEqual(demos[0].plan.bands[0]);
});

test('without an odd end there is no place for it', () => {
  const edits = desk();
  enter(oddEndControls(edits.plan().oddEnd, 'mat', edits), 'oddEnd', 'none');
  expect(Object.keys(oddEndControls(edits.plan().oddEnd, 'mat', edits))).toEqual(['oddEnd']);
});

test('set and unit are taken over', () => {
  const edits = desk();
  enter(setControls(edits.plan().set, edits), 'stakes', 0.25);
  enter(displayControls(edits.plan().display, edits), 'unit', 'cm');
  expect(edits.plan().set.stakes).toBe(0.25);
  expect(edits.plan().display.unit).toBe('cm');
});
