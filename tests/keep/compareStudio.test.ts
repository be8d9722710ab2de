import { expect, test } from 'vitest';
import { comparison, copyOf } from '../../src/keep/compareStudio.ts';
import { studio } from '../../src/keep/studio.ts';
import { demos } from '../../src/plan/demo/demos.ts';
import { movePoint } from '../../src/plan/edit.ts';
import type { Plan } from '../../src/plan/schema.ts';

const { plan } = demos[0];
const wider = movePoint(plan, 2, { row: 32, girth: 700 });

/** Two studios whose settling nobody answers, and how often each was asked. */
function opened() {
  const asked: string[] = [];
  const start = (name: string) => (of: Plan) =>
    studio(of, () => ({ settle: () => void asked.push(name), dispose() {} }));
  const first = start('a')(plan);
  const store = comparison(first, start('b'));
  store.getState().open();
  const second = store.getState().second;
  if (!second) throw new Error('there is no second plan');
  return { asked, first, second, now: store.getState };
}

test('the second plan begins as a copy of the first under a name of its own', () => {
  const { second } = opened();
  expect(second.getState().plan).toEqual({ ...plan, name: 'Orchard trug, second' });
  expect(copyOf({ ...plan, name: 'x'.repeat(120) }).name).toHaveLength(120);
});

test('a change of one plan neither touches the other nor has it settled', () => {
  const { asked, first, second } = opened();
  asked.length = 0;
  second.getState().change({ ...wider, name: 'Wider' }, 'moving a point');
  expect(asked).toEqual(['b']);
  expect(first.getState().plan).toBe(plan);
  first.getState().change(wider, 'moving a point');
  expect(asked).toEqual(['b', 'a']);
});

test('undo goes back in one plan only', () => {
  const { first, second } = opened();
  first.getState().change(wider, 'moving a point');
  second.getState().change({ ...wider, name: 'Wider' }, 'moving a point');
  first.getState().undo();
  expect(first.getState().plan).toBe(plan);
  expect(second.getState().plan.name).toBe('Wider');
  second.getState().undo();
  expect(second.getState().plan.name).toBe('Orchard trug, second');
});

test('a file that is no plan leaves both plans as they were and says so', () => {
  const { first, second } = opened();
  const before = second.getState().plan;
  second.getState().openText('{"format":"girthline"', 'torn.girthline.json');
  expect(second.getState().plan).toBe(before);
  expect(second.getState().problem).toContain('torn.girthline.json');
  expect(first.getState().problem).toBeNull();
});

test('opened again, the second plan is still there', () => {
  const { now, second } = opened();
  now().close();
  now().open();
  expect(now().second).toBe(second);
});

test('the share of the blend stays between both plans', () => {
  const { now } = opened();
  now().blendTo(1.4);
  expect(now().share).toBe(1);
  now().blendTo(-1);
  expect(now().share).toBe(0);
});
