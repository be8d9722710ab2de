import { expect, test } from 'vitest';
import type { History } from '../../src/keep/history.ts';
import {
  changed,
  newHistory,
  opened,
  redoLabel,
  redone,
  undoLabel,
  undone,
} from '../../src/keep/history.ts';
import { demos } from '../../src/plan/demo/demos.ts';

const plan = demos[0].plan;
const named = (name: string) => ({ ...plan, name });
const start = newHistory(plan);

/** The history after changes `[name, key, time]`. */
function after(...changes: readonly (readonly [string, string | undefined, number])[]): History {
  return changes.reduce(
    (history, [name, key, time]) => changed(history, named(name), name, key, time),
    start,
  );
}

test('a change can be undone and redone', () => {
  const history = after(['a', undefined, 0]);
  expect(undone(history).plan).toBe(plan);
  expect(redone(undone(history)).plan.name).toBe('a');
});

test('undoing nothing and redoing nothing change nothing', () => {
  expect(undone(start)).toBe(start);
  expect(redone(start)).toBe(start);
});

test('the changes of one drag are one step', () => {
  const history = after(['a', 'drag', 0], ['b', 'drag', 16], ['c', 'drag', 32]);
  expect(history.past).toHaveLength(1);
  expect(undone(history).plan).toBe(plan);
});

test('a drag that goes on for minutes is one step', () => {
  const moves = Array.from({ length: 200 }, (_, n) => [`${n}`, 'drag', n * 1000] as const);
  expect(after(...moves).past).toHaveLength(1);
});

test('a change after a rest is a step of its own, though its key is the same', () => {
  expect(after(['a', 'drag', 0], ['b', 'drag', 5000]).past).toHaveLength(2);
});

test('another key, or none, starts a step of its own', () => {
  expect(after(['a', 'one', 0], ['b', 'two', 1]).past).toHaveLength(2);
  expect(after(['a', 'one', 0], ['b', undefined, 1], ['c', 'one', 2]).past).toHaveLength(3);
});

test('a change after an undo is a step of its own and ends what could be redone', () => {
  const history = undone(after(['a', 'drag', 0], ['b', 'other', 1]));
  const next = changed(history, named('c'), 'c', 'drag', 2);
  expect(next.future).toEqual([]);
  expect(next.past).toHaveLength(2);
  expect(undone(next).plan.name).toBe('a');
});

test('a thousand steps can all be undone and redone', () => {
  const names = Array.from({ length: 1000 }, (_, n) => [`${n}`, undefined, n] as const);
  let history = after(...names);
  for (let n = 0; n < 1000; n++) history = undone(history);
  expect(history.plan).toBe(plan);
  for (let n = 0; n < 1000; n++) history = redone(history);
  expect(history.plan.name).toBe('999');
});

test('each step says what it did', () => {
  const history = after(['first', undefined, 0], ['second', undefined, 1]);
  expect(history.past.map(({ label }) => label)).toEqual(['first', 'second']);
  expect(undone(history).future.map(({ label }) => label)).toEqual(['second']);
});

test('one hold of the pointer is one step, however long it rests between two moves', () => {
  const history = after(['a', 'hold-point-1-5', 0], ['b', 'hold-point-1-5', 60_000]);
  expect(history.past).toHaveLength(1);
  expect(after(['a', 'hold-point-1-5', 0], ['b', 'hold-point-1-9', 60]).past).toHaveLength(2);
});

test('opening another plan of the shelf is a step like any other, and undo goes back to the one before', () => {
  const there = opened(after(['a', undefined, 0]), named('b'), 'other', 'opening b');
  expect(there).toMatchObject({ id: 'other', plan: { name: 'b' } });
  expect(undone(there)).toMatchObject({ id: start.id, plan: { name: 'a' } });
  expect(redone(undone(there))).toEqual({ ...there, growing: null });
});

test('undoing the opening of a plan says which plan it goes back to, and no other step does', () => {
  const there = opened(after(['a', undefined, 0]), named('b'), 'other', 'opening “b”');
  expect(undoLabel(there)).toBe('opening “b”: back to “a”');
  expect(undoLabel(undone(there))).toBe('a');
  expect(redoLabel(undone(there))).toBe('opening “b”');
  expect(undoLabel(changed(there, named('c'), 'c', undefined, 1))).toBe('c');
  expect([undoLabel(start), redoLabel(start)]).toEqual([undefined, undefined]);
});

test('of more than a thousand steps the oldest go, and it is counted how many', () => {
  const names = Array.from({ length: 1003 }, (_, n) => [`${n}`, undefined, n] as const);
  const history = after(...names);
  expect(history.past).toHaveLength(1000);
  expect(history.first).toBe(3);
  expect(history.past[0]?.plan.name).toBe('2');
});
