import { expect, test } from 'vitest';
import { baseControls } from '../../src/panel/baseControls.ts';
import { handleControls } from '../../src/panel/handleControls.ts';
import type { PlanEdits } from '../../src/panel/usePlanEdits.ts';
import { oddEndControls } from '../../src/panel/wholeControls.ts';
import { baseKinds } from '../../src/plan/base.ts';
import type { Base } from '../../src/plan/schema.ts';
import { matOf } from '../plan/plans.ts';
import { desk, enter } from './desk.ts';

const base = (edits: PlanEdits) => baseControls(edits.plan().base, 'mm', edits);
const handle = (edits: PlanEdits) => handleControls(edits.plan().handle, 'mm', edits);

/** A desk with the first demo on another base. */
function deskOn(kind: Base['kind']): PlanEdits {
  const edits = desk();
  expect(enter(base(edits), 'baseKind', kind)).toBeNull();
  expect(edits.plan().base.kind).toBe(kind);
  return edits;
}

test('each kind of base can be chosen from each other', () => {
  for (const from of baseKinds) {
    for (const to of baseKinds) {
      const edits = deskOn(from);
      expect(enter(base(edits), 'baseKind', to)).toBeNull();
      expect(edits.plan().base.kind).toBe(to);
    }
  }
});

test.each(baseKinds)(
  'every control of a %s takes its own value and leaves the plan as it was',
  (kind) => {
    const edits = deskOn(kind);
    const before = edits.plan();
    for (const [key, control] of Object.entries(base(edits))) {
      if (control.kind === 'length') expect(enter(base(edits), key, control.mm)).toBeNull();
      if (control.kind === 'count') expect(enter(base(edits), key, control.count)).toBeNull();
      if (control.kind === 'choice') expect(enter(base(edits), key, control.value)).toBeNull();
    }
    expect(edits.plan()).toEqual(before);
  },
);

test.each(baseKinds)(
  'every control of a %s takes the least and the most it says, or gives a reason',
  (kind) => {
    for (const end of ['least', 'most'] as const) {
      for (const [key, control] of Object.entries(base(deskOn(kind)))) {
        if (control.kind !== 'length' && control.kind !== 'count') continue;
        const edits = deskOn(kind);
        const problem = enter(base(edits), key, control[end]);
        if (problem !== null) expect(problem).toMatch(/; found /);
      }
    }
  },
);

test('fillers of a mat come and go, and do not move the base', () => {
  const edits = desk();
  const before = edits.plan();
  expect(enter(base(edits), 'fillersLengthwise', 4)).toBeNull();
  expect(matOf(edits.plan()).fillers).toEqual({ lengthwise: 4, crosswise: 0 });
  expect(enter(base(edits), 'fillersLengthwise', 0)).toBeNull();
  expect(edits.plan()).toEqual(before);
});

test('ends are laid in on a wheel between hub and edge, and taken out again', () => {
  const edits = deskOn('wheel');
  const before = edits.plan();
  expect(Object.keys(base(edits))).not.toContain('laidInAt');
  expect(enter(base(edits), 'laidIn', 6)).toBeNull();
  expect(edits.plan().base).toMatchObject({ added: { ends: 6 } });
  expect(Object.keys(base(edits))).toContain('laidInAt');
  expect(enter(base(edits), 'laidIn', 0)).toBeNull();
  expect(edits.plan()).toEqual(before);
});

test('a board is round or a rectangle, which has a width of its own', () => {
  const edits = deskOn('board');
  expect(Object.keys(base(edits))).toContain('boardWidth');
  expect(enter(base(edits), 'shape', 'round')).toBeNull();
  expect(Object.keys(base(edits))).not.toContain('boardWidth');
  expect(enter(base(edits), 'shape', 'rectangle')).toBeNull();
  expect(Object.keys(base(edits))).not.toContain('centreLift');
});

test('a size as sold sets width and thickness; a typed one is a size of one’s own', () => {
  const edits = desk();
  const size = () => {
    const control = base(edits).size;
    if (control?.kind !== 'choice') throw new Error('there is no size to choose');
    return control;
  };
  const chosen = () => size().choices.find(({ value }) => value === size().value)?.text;
  const half = size().choices.find(({ text }) => text.startsWith('1/2 in,'));
  expect(enter(base(edits), 'size', half?.value ?? '')).toBeNull();
  expect(edits.plan().base.stake).toMatchObject({ width: 12.7, thickness: 1.2 });
  expect(chosen()).toBe('1/2 in, 12.7 × 1.2 mm');
  expect(enter(base(edits), 'width', 13.3)).toBeNull();
  expect(chosen()).toBe('a size of my own');
});

test('an odd end is a split spoke on a wheel, and stands anywhere', () => {
  const edits = deskOn('wheel');
  const controls = oddEndControls(edits.plan().oddEnd, 'wheel', edits);
  expect(Object.keys(controls)).toEqual(['oddEnd']);
  expect(controls.oddEnd).toMatchObject({
    choices: [{ text: 'one spoke split' }, { text: 'half a spoke added' }, { text: 'none' }],
  });
  expect(enter(controls, 'oddEnd', 'added')).toBeNull();
});

test('each kind of handle can be chosen from each other, and keeps its bow', () => {
  const edits = desk();
  const { bow } = edits.plan().handle as { readonly bow?: object };
  for (const kind of ['fixed', 'swing', 'fixed', 'none', 'fixed', 'none', 'swing']) {
    expect(enter(handle(edits), 'handleKind', kind)).toBeNull();
    expect(edits.plan().handle.kind).toBe(kind);
  }
  enter(handle(edits), 'handleKind', 'fixed');
  expect(Object.keys(handle(edits))).toEqual(expect.arrayContaining(['across', 'spread', 'rise']));
  expect(edits.plan().handle).toMatchObject({ bow });
});

test('a fixed handle holds the width of the base at first, and any that is typed', () => {
  const edits = desk();
  enter(handle(edits), 'handleKind', 'fixed');
  expect(edits.plan().handle).toMatchObject({ across: 'width', spread: 117.5 });
  expect(enter(handle(edits), 'spread', 150)).toBeNull();
  expect(enter(handle(edits), 'across', 'length')).toBeNull();
  expect(enter(handle(edits), 'wrapSize', '6 mm binder')).toBeNull();
  expect(edits.plan().handle).toMatchObject({ across: 'length', spread: 150, wrap: { width: 6 } });
});
