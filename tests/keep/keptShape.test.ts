import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { newHistory } from '../../src/keep/history.ts';
import { keepShapes } from '../../src/keep/keepShapes.ts';
import { shapeStore } from '../../src/keep/shapeStore.ts';
import { isRested, studio } from '../../src/keep/studio.ts';
import { basketMesh } from '../../src/mesh/basketMesh.ts';
import { settleBasket } from '../../src/model/settleBasket.ts';
import { demos } from '../../src/plan/demo/demos.ts';
import type { Plan } from '../../src/plan/schema.ts';
import type { SettleResult } from '../../src/work/caller.ts';

const { plan } = demos[0];
const basket = settleBasket(plan);
const mesh = basketMesh(basket);
const taller: Plan = {
  ...plan,
  bands: plan.bands.map((band) => ({ ...band, rows: band.rows + 1 })),
};

/** A studio that waits for what was kept. The test answers what it asks. */
function waiting() {
  const asked: { plan: Plan; polish: boolean }[] = [];
  let hear: (result: SettleResult) => void = () => {};
  const store = studio(
    plan,
    (onResult) => {
      hear = onResult;
      return { settle: (of, { polish }) => void asked.push({ plan: of, polish }), dispose() {} };
    },
    { waits: true },
  );
  const settled = (polished = true) =>
    hear({ kind: 'settled', plan, number: 1, asked: 0, polished, basket, mesh, milliseconds: 7 });
  return { asked, store, settled };
}

beforeEach(() => {
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
});
afterEach(() => {
  vi.useRealTimers();
});

test('a plan whose shape was kept has its basket at once; the worker is asked when that is shown', () => {
  const { asked, store } = waiting();
  store.getState().restore(newHistory(plan, 'x'), { basket, mesh, milliseconds: 7 });
  expect(isRested(store.getState())).toBe(true);
  expect(store.getState().mesh).toBe(mesh);
  expect(asked).toEqual([]);
  vi.advanceTimersByTime(5000);
  expect(asked).toEqual([{ plan, polish: true }]);
  expect(store.getState().state).toBe('settled');
});

test('an edit soon after goes to the worker at once, and only that', () => {
  const { asked, store } = waiting();
  store.getState().restore(newHistory(plan, 'x'), { basket, mesh, milliseconds: 7 });
  store.getState().change(taller, 'rows');
  vi.advanceTimersByTime(5000);
  expect(asked).toEqual([{ plan: taller, polish: false }]);
});

test('another name in the meantime is on the basket that the worker then confirms', () => {
  const { asked, store } = waiting();
  store.getState().restore(newHistory(plan, 'x'), { basket, mesh, milliseconds: 7 });
  store.getState().change({ ...plan, name: 'Pears' }, 'name');
  vi.advanceTimersByTime(5000);
  expect(asked.map(({ plan: { name } }) => name)).toEqual(['Pears']);
  expect(store.getState().basket?.plan.name).toBe('Pears');
});

test('a shape that has come to rest is kept for the next page', async () => {
  globalThis.indexedDB = new IDBFactory();
  const { store, settled } = waiting();
  const shapes = shapeStore('one');
  keepShapes(store, shapes, null);
  store.getState().restore(newHistory(plan, 'x'));
  settled();
  vi.advanceTimersByTime(5000);
  vi.useRealTimers();
  await vi.waitFor(async () => {
    expect((await shapes.find(plan))?.basket.positions).toEqual(basket.positions);
  });
});

test('a shape on its way, or one that is kept already, is not written', () => {
  const written: Plan[] = [];
  const shapes = { ...shapeStore(null), keep: async (of: Plan) => void written.push(of) };
  const { store, settled } = waiting();
  keepShapes(store, shapes, null);
  store.getState().restore(newHistory(plan, 'x'));
  settled(false);
  vi.advanceTimersByTime(5000);
  expect(written).toEqual([]);
  settled();
  vi.advanceTimersByTime(5000);
  settled();
  vi.advanceTimersByTime(5000);
  expect(written).toEqual([plan]);
});
