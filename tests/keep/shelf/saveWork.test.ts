import { expect, test } from 'vitest';
import { pageOf, withChange } from '../../../src/keep/benchBook.ts';
import { changed, newHistory, opened, redone, undone } from '../../../src/keep/history.ts';
import { readWork } from '../../../src/keep/shelf/readWork.ts';
import type { ShelfDb } from '../../../src/keep/shelf/records.ts';
import { saveWork } from '../../../src/keep/shelf/saveWork.ts';
import { stateRow } from '../../../src/keep/shelf/states.ts';
import { versionsOf } from '../../../src/keep/shelf/versions.ts';
import { demos } from '../../../src/plan/demo/demos.ts';
import { emptyShelf, wholeShelf, workOf } from './shelfDesk.ts';

const { plan } = demos[0];
const named = (name: string) => ({ ...plan, name });

async function found(db: ShelfDb, tab = 'tab') {
  const work = await readWork(db, tab);
  if (!work || !('history' in work)) throw new Error('nothing was found');
  return work;
}

test('what is saved is found again, with all that can be undone and redone', async () => {
  const db = await emptyShelf();
  let history = newHistory(plan, 'x');
  for (const name of ['a', 'b', 'c', 'd'])
    history = changed(history, named(name), name, undefined, 0);
  history = undone(undone(history));
  expect(await saveWork(db, workOf(history))).toMatchObject({ kind: 'saved', revision: 1 });
  expect((await found(db)).history).toEqual(history);
  expect((await found(db)).known.get('x')).toBe(1);
});

test('only what has changed is written: undo writes no plan of the row anew', async () => {
  const db = await emptyShelf();
  let history = newHistory(plan, 'x');
  for (const name of ['a', 'b', 'c']) history = changed(history, named(name), name, undefined, 0);
  await saveWork(db, workOf(history));
  const written = stateRow(history);
  const states = db.transaction('states', 'readwrite').store;
  for (const at of [0, 1, 2, 3]) {
    const state = await states.get(['tab', at]);
    if (state) await states.put({ ...state, label: `marked ${at}` });
  }
  history = undone(history);
  await saveWork(db, workOf(history, { written, known: 1 }));
  const labels = async () => (await db.getAll('states')).map(({ label }) => label);
  expect(await labels()).toEqual(['marked 0', 'marked 1', 'marked 2', 'marked 3']);
  const back = stateRow(history);
  history = changed(history, named('e'), 'e', undefined, 0);
  await saveWork(db, workOf(history, { written: back, known: 2 }));
  expect(await labels()).toEqual(['marked 0', 'marked 1', 'marked 2', 'e']);
});

test('steps beyond the most that are kept go from the database too', async () => {
  const db = await emptyShelf();
  let history = newHistory(plan, 'x');
  for (let n = 0; n < 1000; n += 1) history = changed(history, named(`${n}`), `${n}`, undefined, 0);
  await saveWork(db, workOf(history));
  const written = stateRow(history);
  for (let n = 0; n < 5; n += 1) history = changed(history, named(`+${n}`), `+${n}`, undefined, 0);
  await saveWork(db, workOf(history, { written, known: 1 }));
  expect(await db.count('states')).toBe(1001);
  expect((await found(db)).history).toEqual({ ...history, growing: null });
});

test('a row whose tab was cleared away is written whole again', async () => {
  const db = await emptyShelf();
  let history = changed(newHistory(plan, 'x'), named('a'), 'a', undefined, 0);
  await saveWork(db, workOf(history));
  const written = stateRow(history);
  await db.clear('states');
  await db.clear('tabs');
  history = changed(history, named('b'), 'b', undefined, 0);
  await saveWork(db, workOf(history, { written, known: 1 }));
  expect((await found(db)).history).toEqual(history);
});

test('a plan that was only looked at does not go on the shelf, and is at hand again all the same', async () => {
  const db = await emptyShelf();
  const history = opened(newHistory(plan, 'x'), named('y'), 'y', 'opening y');
  await saveWork(db, workOf(history, { isWorkedOn: false }));
  expect(await db.count('plans')).toBe(0);
  expect((await found(db)).history).toEqual(history);
});

test('what another tab has written since is not written over; mine is kept among the steps', async () => {
  const db = await emptyShelf();
  const theirs = newHistory(named('theirs'), 'x');
  await saveWork(db, workOf(newHistory(plan, 'x')));
  await saveWork(db, workOf(theirs, { tab: 'other', known: 1 }));
  const mine = changed(newHistory(plan, 'x'), named('mine'), 'mine', undefined, 0);
  const clash = await saveWork(db, workOf(mine, { known: 1 }));
  expect(clash).toMatchObject({ kind: 'clash', theirs: { plan: { name: 'theirs' }, revision: 2 } });
  expect((await db.get('plans', 'x'))?.plan.name).toBe('theirs');
  const { history } = await found(db);
  expect(history.plan.name).toBe('theirs');
  expect(undone(history).plan.name).toBe('mine');
});

test('a plan that another tab has deleted does not come back by itself', async () => {
  const db = await emptyShelf();
  await saveWork(db, workOf(newHistory(plan, 'x')));
  await db.delete('plans', 'x');
  const mine = changed(newHistory(plan, 'x'), named('mine'), 'mine', undefined, 0);
  expect(await saveWork(db, workOf(mine, { known: 1 }))).toEqual({ kind: 'clash', theirs: null });
  expect(await db.count('plans')).toBe(0);
});

test('two tabs that have come to the same plan do not clash', async () => {
  const db = await emptyShelf();
  await saveWork(db, workOf(newHistory(plan, 'x')));
  await saveWork(db, workOf(newHistory(named('same'), 'x'), { tab: 'other', known: 1 }));
  const saving = await saveWork(db, workOf(newHistory(named('same'), 'x'), { known: 1 }));
  expect(saving).toMatchObject({ kind: 'saved', revision: 2 });
});

test('two tabs at the bench of one plan clash over its page', async () => {
  const db = await emptyShelf();
  const at = (row: number) => withChange(pageOf({}, 'x', {}), { row });
  const history = newHistory(plan, 'x');
  await saveWork(db, workOf(history, { page: at(1) }));
  await saveWork(db, workOf(history, { page: at(5), known: 1, tab: 'other' }));
  const clash = await saveWork(db, workOf(history, { page: at(2), known: 1 }));
  expect(clash).toMatchObject({ kind: 'clash', theirs: { page: at(5) } });
  expect((await db.get('bench', 'x'))?.page).toEqual(at(5));
});

test('a version is put by before a change ten minutes after the last one, and not in between', async () => {
  const db = await emptyShelf();
  const minutes = 60_000;
  const save = (name: string, known: number | undefined, now: number) =>
    saveWork(db, workOf(newHistory(named(name), 'x'), { known, now }));
  await save('first', undefined, 20 * minutes);
  await save('second', 1, 31 * minutes);
  await save('third', 2, 32 * minutes);
  await save('fourth', 3, 50 * minutes);
  const versions = await versionsOf(db, 'x');
  expect(versions.map(({ plan: { name }, made }) => [name, made / minutes])).toEqual([
    ['third', 32],
    ['first', 20],
  ]);
});

test('a page that came by the plan’s name goes once the plan has it, and not for one begun anew', async () => {
  const db = await emptyShelf();
  const of = `name:${plan.name}`;
  const history = newHistory(plan, 'x');
  const fresh = withChange(pageOf({}, 'x', {}), { row: 9 });
  const unmeasured = withChange(pageOf({}, 'x', {}), { row: 5, rim: 700 });
  const measured = pageOf({}, 'x', { 4: 612 });
  for (const older of [unmeasured, measured]) {
    await db.put('bench', { of, page: older });
    const known = (await db.get('plans', 'x'))?.revision;
    expect(await saveWork(db, workOf(history, { page: fresh, known }))).toMatchObject({
      kind: 'saved',
    });
    expect((await db.get('bench', of))?.page).toEqual(older);
    await db.delete('bench', 'x');
  }
  const taken = withChange(measured, { row: 7, girths: { 4: 612, 6: 630 } });
  const known = (await db.get('plans', 'x'))?.revision;
  await saveWork(db, workOf(history, { page: taken, known }));
  expect((await db.get('bench', 'x'))?.page).toEqual(taken);
  expect(await db.get('bench', of)).toBeUndefined();
});

test('where the browser refuses, all is as it was', async () => {
  const db = await emptyShelf();
  await saveWork(db, workOf(newHistory(plan, 'x')));
  const before = await wholeShelf(db);
  // a function cannot be stored: the last put of the transaction is refused
  const page = { chosen: '1', records: [], bad: () => 0 };
  const mine = changed(newHistory(plan, 'x'), named('mine'), 'mine', undefined, 0);
  await expect(saveWork(db, workOf(mine, { known: 1, page }))).rejects.toThrow();
  expect(await wholeShelf(db)).toEqual(before);
});

test('redo is there after a reload, and a change ends it', async () => {
  const db = await emptyShelf();
  const history = undone(changed(newHistory(plan, 'x'), named('a'), 'a', undefined, 0));
  await saveWork(db, workOf(history));
  const again = (await found(db)).history;
  expect(redone(again).plan.name).toBe('a');
  const other = changed(again, named('b'), 'b', undefined, 0);
  await saveWork(db, workOf(other, { written: stateRow(again), known: 1 }));
  expect((await found(db)).history).toEqual(other);
});
