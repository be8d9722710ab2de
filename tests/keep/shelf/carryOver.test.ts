import { expect, test } from 'vitest';
import { pageOf, withChange } from '../../../src/keep/benchBook.ts';
import { keepDraft } from '../../../src/keep/draft.ts';
import { carryOver } from '../../../src/keep/shelf/carryOver.ts';
import { pageOfPlan } from '../../../src/keep/shelf/readWork.ts';
import { cardsOf } from '../../../src/keep/shelf/shelfPlans.ts';
import { demos } from '../../../src/plan/demo/demos.ts';
import { emptyShelf, storage, wholeShelf } from './shelfDesk.ts';

const { plan } = demos[0];
const mine = { ...plan, name: 'My trug' };
const page = withChange(pageOf({}, '', { 4: 612 }), { row: 5, rim: 700 });

/** The plain storage as an older Girthline has left it. */
function asOlderLeft(draft = mine) {
  const store = storage();
  keepDraft(store, draft);
  store.setItem('girthline.aside', JSON.stringify([{ ...plan, name: 'Second' }, { broken: 1 }]));
  store.setItem('girthline.bench', JSON.stringify({ 'My trug': page, Elsewhere: page }));
  return store;
}

test('draft, plans put aside and bench of an older Girthline come on the shelf, once', async () => {
  const db = await emptyShelf();
  const store = asOlderLeft();
  const carried = await carryOver(db, store);
  expect(carried).toMatchObject({ plan: mine, revision: 1, page });
  expect((await cardsOf(db)).map(({ name }) => name).sort()).toEqual(['My trug', 'Second']);
  expect((await db.get('plans', carried?.id ?? ''))?.plan).toEqual(mine);
  expect(await pageOfPlan(db, carried?.id ?? '', undefined)).toEqual(page);
  expect(await pageOfPlan(db, 'any', 'Elsewhere')).toEqual(page);
  // what cannot be read stays, for a Girthline that can
  expect(store.length).toBe(1);
  expect(store.getItem('girthline.aside')).toBe('[{"broken":1}]');
  expect(await carryOver(db, store)).toBeNull();
  expect(await db.count('plans')).toBe(2);
});

test('a demo that was only looked at is at hand and not on the shelf', async () => {
  const db = await emptyShelf();
  const store = storage();
  keepDraft(store, plan);
  expect(await carryOver(db, store)).toMatchObject({ plan, revision: undefined });
  expect(await db.count('plans')).toBe(0);
});

test('a draft of a newer version is left where it is while the others come over', async () => {
  const db = await emptyShelf();
  const store = asOlderLeft();
  const newer = JSON.stringify({ ...mine, version: 99 });
  store.setItem('girthline.draft', newer);
  expect(await carryOver(db, store)).toBeNull();
  expect((await cardsOf(db)).map(({ name }) => name)).toEqual(['Second']);
  expect(store.getItem('girthline.draft')).toBe(newer);
});

test('pages of the bench and lists that cannot be read stay, and those that can come over', async () => {
  const db = await emptyShelf();
  const store = asOlderLeft();
  store.setItem('girthline.bench', JSON.stringify({ 'My trug': page, Newer: { pages: 2 } }));
  store.setItem('girthline.aside', '{"of":"a newer one"}');
  expect(await carryOver(db, store)).toMatchObject({ plan: mine, page });
  expect(store.getItem('girthline.draft')).toBeNull();
  expect(store.getItem('girthline.bench')).toBe('{"Newer":{"pages":2}}');
  expect(store.getItem('girthline.aside')).toBe('{"of":"a newer one"}');
});

test('where the database refuses, the old keeping stays as it was', async () => {
  const db = await emptyShelf();
  const store = asOlderLeft();
  db.close();
  await expect(carryOver(db, store)).rejects.toThrow();
  expect(store.length).toBe(3);
});

test('a browser with nothing to carry over is left alone', async () => {
  const db = await emptyShelf();
  const before = await wholeShelf(db);
  expect(await carryOver(db, storage())).toBeNull();
  expect(await carryOver(db, null)).toBeNull();
  expect(await wholeShelf(db)).toEqual(before);
});
