import { expect, test } from 'vitest';
import type { DraftStore } from '../../src/keep/draft.ts';
import { forgetDraft, keepDraft, keptDraft } from '../../src/keep/draft.ts';
import { demos } from '../../src/plan/demo/demos.ts';

const plan = demos[1]?.plan ?? demos[0].plan;

function storeWith(held: Map<string, string>): DraftStore {
  return {
    getItem: (key) => held.get(key) ?? null,
    setItem: (key, text) => void held.set(key, text),
    removeItem: (key) => void held.delete(key),
  };
}

const closed: DraftStore = {
  getItem() {
    throw new Error('not allowed');
  },
  setItem() {
    throw new Error('no room');
  },
  removeItem() {
    throw new Error('not allowed');
  },
};

test('a kept plan comes back the same', () => {
  const store = storeWith(new Map());
  keepDraft(store, plan);
  expect(keptDraft(store)).toEqual(plan);
});

test('nothing kept, something forgotten and something broken are no plan', () => {
  const held = new Map<string, string>();
  const store = storeWith(held);
  expect(keptDraft(store)).toBeNull();
  keepDraft(store, plan);
  for (const key of held.keys()) held.set(key, '{"format": "girth');
  expect(keptDraft(store)).toBeNull();
  keepDraft(store, plan);
  forgetDraft(store);
  expect(keptDraft(store)).toBeNull();
});

test('a browser that allows no storage is no error', () => {
  for (const store of [closed, null]) {
    expect(() => keepDraft(store, plan)).not.toThrow();
    expect(() => forgetDraft(store)).not.toThrow();
    expect(keptDraft(store)).toBeNull();
  }
});
