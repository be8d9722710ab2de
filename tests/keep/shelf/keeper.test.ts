import { expect, onTestFinished, test } from 'vitest';
import type { BenchPage } from '../../../src/keep/benchBook.ts';
import { pageOf, withChange } from '../../../src/keep/benchBook.ts';
import { newHistory } from '../../../src/keep/history.ts';
import { readJournal } from '../../../src/keep/shelf/journal.ts';
import { keeper } from '../../../src/keep/shelf/keeper.ts';
import { readWork } from '../../../src/keep/shelf/readWork.ts';
import type { ShelfDb } from '../../../src/keep/shelf/records.ts';
import type { TheirPlan } from '../../../src/keep/shelf/saveWork.ts';
import { saveWork } from '../../../src/keep/shelf/saveWork.ts';
import { studio } from '../../../src/keep/studio.ts';
import { demos } from '../../../src/plan/demo/demos.ts';
import { emptyShelf, storage, workOf } from './shelfDesk.ts';

const { plan } = demos[0];
const named = (name: string) => ({ ...plan, name });

/** A tab with a studio that is kept, and what it heard. */
function tabOf(db: ShelfDb, tab: string, known?: number) {
  const store = studio(plan, () => ({ settle() {}, dispose() {} }), { waits: true });
  store.getState().restore(newHistory(plan, 'x'));
  const journal = storage();
  const clashes: (TheirPlan | null | undefined)[] = [];
  const refusals: unknown[] = [];
  const pages = new Map<string, BenchPage>();
  const own = keeper({
    ...{ db, tab, studio: store, journal },
    pageOf: (id) => pages.get(id),
    ...(known !== undefined && {
      found: { written: null, count: 0, known: new Map([['x', known]]) },
    }),
    onSaved() {},
    onClash: (theirs) => clashes.push(theirs),
    onRefused: (error) => refusals.push(error),
  });
  if (known === undefined) own.looksAt('x', plan);
  onTestFinished(() => own.stop());
  const name = (to: string) => {
    const { plan: now, change } = store.getState();
    change({ ...now, name: to }, `naming it ${to}`);
  };
  return { own, store, journal, clashes, refusals, pages, name };
}

test('a change is in the journal at once and in the database a moment later', async () => {
  const db = await emptyShelf();
  const { name, own, journal } = tabOf(db, 'a');
  name('one');
  expect(readJournal(journal, 'a')).toMatchObject({ plan: { name: 'one' }, known: null, count: 1 });
  expect(await db.count('plans')).toBe(0);
  await expect.poll(() => db.count('plans')).toBe(1);
  expect((await db.get('plans', 'x'))?.plan.name).toBe('one');
  await own.flush();
  expect(readJournal(journal, 'a')).toBeNull();
});

test('a change is kept though another plan is opened before it was saved', async () => {
  const db = await emptyShelf();
  const { name, own, store } = tabOf(db, 'a');
  name('one');
  await own.flush();
  name('two');
  store.getState().open(named('y'), 'y');
  await own.flush();
  expect((await db.get('plans', 'x'))?.plan.name).toBe('two');
  expect((await db.get('plans', 'y'))?.plan.name).toBe('y');
  store.getState().undo();
  expect(store.getState().plan.name).toBe('two');
  await own.flush();
  expect((await db.get('plans', 'x'))?.revision).toBe(2);
});

test('a plan that was deleted is not put back by a change from before', async () => {
  const db = await emptyShelf();
  const { name, own, store } = tabOf(db, 'a');
  name('one');
  const demo = named('y');
  own.looksAt('y', demo);
  store.getState().open(demo, 'y');
  own.knows('x', undefined);
  await own.flush();
  expect(await db.count('plans')).toBe(0);
});

test('a plan that another tab changed is not overwritten by undoing back to it after a reload', async () => {
  const db = await emptyShelf();
  const { name, own, store } = tabOf(db, 'a');
  name('one');
  await own.flush();
  store.getState().open(named('y'), 'y');
  await own.flush();
  const untouched = await readWork(db, 'a');
  expect(untouched && 'known' in untouched && untouched.known.get('x')).toBe(1);
  await saveWork(db, workOf(newHistory(named('of b'), 'x'), { tab: 'b', known: 1 }));
  const found = await readWork(db, 'a');
  expect(found && 'known' in found && found.known.has('x')).toBe(false);
  expect(found && 'known' in found && found.known.has('y')).toBe(true);
});

test('undoing past the opening of a plan that another tab had changed asks, and redo settles it', async () => {
  const db = await emptyShelf();
  const { name, own, store, clashes } = tabOf(db, 'a');
  name('one');
  await own.flush();
  store.getState().open(named('y'), 'y');
  await own.flush();
  const theirs = named('of b');
  await saveWork(db, workOf(newHistory(theirs, 'x'), { tab: 'b', known: 1 }));
  own.knows('x', 2, theirs);
  store.getState().open(theirs, 'x');
  await own.flush();
  expect(clashes.at(-1)).toBeUndefined();
  store.getState().undo();
  store.getState().undo();
  expect(store.getState().plan.name).toBe('one');
  await own.flush();
  expect(clashes.at(-1)).toMatchObject({ plan: { name: 'of b' }, revision: 2 });
  expect((await db.get('plans', 'x'))?.plan.name).toBe('of b');
  store.getState().redo();
  store.getState().redo();
  name('of b, wider');
  await own.flush();
  expect(clashes.at(-1)).toBeUndefined();
  expect((await db.get('plans', 'x'))?.plan.name).toBe('of b, wider');
});

test('undoing past the opening of a plan that nobody else changed asks nothing', async () => {
  const db = await emptyShelf();
  const { name, own, store, clashes } = tabOf(db, 'a');
  name('one');
  store.getState().open(named('y'), 'y');
  // at once, before anything was saved
  store.getState().undo();
  store.getState().undo();
  await own.flush();
  expect((await db.get('plans', 'x'))?.plan.name).toBe(plan.name);
  for (let step = 0; step < 2; step += 1) store.getState().redo();
  store.getState().undo();
  name('two');
  await own.flush();
  expect((await db.get('plans', 'x'))?.plan.name).toBe('two');
  expect(clashes.every((clash) => clash === undefined)).toBe(true);
});

test('the moves of a drag are not written one by one', async () => {
  const db = await emptyShelf();
  const { store, own } = tabOf(db, 'a');
  for (let move = 0; move < 200; move += 1) {
    store.getState().change(named(`at ${move}`), 'drag', 'drag');
  }
  await own.flush();
  const record = await db.get('plans', 'x');
  expect(record).toMatchObject({ plan: { name: 'at 199' }, revision: 1 });
  expect(await db.count('states')).toBe(2);
});

test('a demo that is only looked at is at hand after a reload and not on the shelf', async () => {
  const db = await emptyShelf();
  const { store, own } = tabOf(db, 'a');
  const demo = named('y');
  own.looksAt('y', demo);
  store.getState().open(demo, 'y');
  await own.flush();
  expect(await db.count('plans')).toBe(0);
  expect(await readWork(db, 'a')).toMatchObject({ history: { id: 'y', plan: { name: 'y' } } });
});

test('what is done at the bench alone is kept too', async () => {
  const db = await emptyShelf();
  const { own, pages } = tabOf(db, 'a');
  const page = withChange(pageOf({}, 'x', {}), { row: 4 });
  pages.set('x', page);
  own.changed();
  await own.flush();
  expect((await db.get('bench', 'x'))?.page).toEqual(page);
  expect(await db.count('plans')).toBe(1);
});

test('of two tabs that change one plan the second hears of it, and nothing is written over', async () => {
  const db = await emptyShelf();
  await saveWork(db, workOf(newHistory(plan, 'x')));
  const [a, b] = [tabOf(db, 'a', 1), tabOf(db, 'b', 1)];
  a.name('of a');
  await a.own.flush();
  b.name('of b');
  await b.own.flush();
  expect(b.clashes.at(-1)).toMatchObject({ plan: { name: 'of a' }, revision: 2 });
  expect(a.clashes.every((clash) => clash === undefined)).toBe(true);
  expect((await db.get('plans', 'x'))?.plan.name).toBe('of a');

  b.own.knows('x', 2);
  b.store.getState().open(named('of a'), 'x', 'taking the other');
  await b.own.flush();
  expect(b.clashes.at(-1)).toBeUndefined();
  expect(b.store.getState().history.past.at(-1)?.plan.name).toBe('of b');
});

test('a tab that looks whether its plan was changed elsewhere hears of that too', async () => {
  const db = await emptyShelf();
  await saveWork(db, workOf(newHistory(plan, 'x')));
  const a = tabOf(db, 'a', 1);
  await a.own.check();
  expect(a.clashes).toEqual([undefined]);
  await db.delete('plans', 'x');
  await a.own.check();
  expect(a.clashes.at(-1)).toBeNull();
});

test('a refusal is heard at once, and the change stays in the journal', async () => {
  const db = await emptyShelf();
  const { name, own, journal, refusals } = tabOf(db, 'a');
  db.close();
  name('one');
  await own.flush();
  expect(refusals.at(-1)).toBeInstanceOf(Error);
  expect(readJournal(journal, 'a')?.plan.name).toBe('one');
});
