import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { keepDraft } from '../../../src/keep/draft.ts';
import { changed, newHistory, opened, redone, undone } from '../../../src/keep/history.ts';
import { findWork } from '../../../src/keep/shelf/findWork.ts';
import type { JournalEntry } from '../../../src/keep/shelf/journal.ts';
import { readJournal, writeJournal } from '../../../src/keep/shelf/journal.ts';
import { saveWork } from '../../../src/keep/shelf/saveWork.ts';
import { cardsOf } from '../../../src/keep/shelf/shelfPlans.ts';
import { stateRow, tailOf } from '../../../src/keep/shelf/states.ts';
import { demos } from '../../../src/plan/demo/demos.ts';
import { emptyShelf, storage, workOf } from './shelfDesk.ts';

const { plan } = demos[0];
const named = (name: string) => ({ ...plan, name });

/** The browser's locks, of which Node has none: names that are held, by other tabs and by this one. */
const locks = new Set<string>();
type Held = (lock: object | null) => unknown;
beforeEach(() => {
  const request = async (name: string, _: unknown, held: Held) => {
    if (locks.has(name)) return held(null);
    locks.add(name);
    const done = await held({ name });
    locks.delete(name);
    return done;
  };
  vi.stubGlobal('navigator', { locks: { request } });
});
afterEach(() => {
  locks.clear();
  vi.unstubAllGlobals();
});

/** A tab that saved `first` as its change 1, and a browser whose storage says which tab it is. */
async function leftBehind() {
  const db = await emptyShelf();
  await saveWork(db, workOf(newHistory(named('first'), 'x')));
  const [local, ofTab] = [storage(), storage()];
  ofTab.setItem('girthline.tab', 'tab');
  const jot = (entry: Partial<JournalEntry>, tab = 'tab') =>
    writeJournal(local, tab, {
      ...{ id: 'x', plan: named('second'), label: 'naming it', known: 1, page: null, count: 2 },
      ...{ time: Date.now(), tail: null },
      ...entry,
    });
  const find = () => {
    // as after a reload: the page before has let go of the tab's name
    locks.delete('girthline.tab.tab');
    return findWork(db, local, ofTab);
  };
  return { db, local, jot, find };
}

test('a change that is in the journal only comes back, as a step that can be undone', async () => {
  const { jot, find } = await leftBehind();
  jot({});
  const { work, isUnsaved } = await find();
  expect(work?.history.plan.name).toBe('second');
  expect(work && undone(work.history).plan.name).toBe('first');
  expect(isUnsaved).toBe(true);
  expect(work?.known.get('x')).toBe(1);
});

test('a journal that is no newer than the database changes nothing', async () => {
  const { jot, find } = await leftBehind();
  jot({ count: 1, plan: named('older') });
  const { work, isUnsaved } = await find();
  expect(work?.history.plan.name).toBe('first');
  expect(isUnsaved).toBe(false);
});

test('a change on top of a save of the same tab that had just gone through comes back', async () => {
  const { db, jot, find } = await leftBehind();
  const second = newHistory(named('second'), 'x');
  await saveWork(db, workOf(second, { known: 1, count: 2 }));
  // written while that save was under way, so it knows only of the revision before
  jot({ plan: named('third'), known: 1, count: 3 });
  expect((await find()).work?.history.plan.name).toBe('third');
});

test('a change to a plan that another tab has changed since comes back as a copy', async () => {
  const { db, jot, find } = await leftBehind();
  await saveWork(db, workOf(newHistory(named('theirs'), 'x'), { tab: 'other', known: 1 }));
  jot({});
  const { work } = await find();
  expect(work?.history.plan.name).toBe('second, copy');
  expect(work?.history.id).not.toBe('x');
  expect((await db.get('plans', 'x'))?.plan.name).toBe('theirs');
});

test('a plan that was opened and changed just before the end comes back in place of the other', async () => {
  const { jot, find } = await leftBehind();
  jot({ id: 'y', plan: named('another'), known: null, label: 'opening another' });
  const { work } = await find();
  expect(work?.history).toMatchObject({ id: 'y', plan: { name: 'another' } });
  expect(work && undone(work.history)).toMatchObject({ id: 'x', plan: { name: 'first' } });
});

test('what was undone just before the end can be redone', async () => {
  const { jot, find } = await leftBehind();
  const first = newHistory(named('first'), 'x');
  const second = changed(first, named('second'), 'naming it', undefined, 0);
  const third = changed(second, named('third'), 'naming it again', undefined, 0);
  const back = undone(third);
  jot({ tail: tailOf(stateRow(back), stateRow(first)), count: 4 });
  const { work } = await find();
  expect(work?.history).toEqual({ ...back, growing: null });
  expect(work && redone(work.history).plan.name).toBe('third');
});

test('the last change of a tab that is gone for good comes into the database', async () => {
  const { db, local, jot, find } = await leftBehind();
  await saveWork(db, workOf(newHistory(named('z'), 'z'), { tab: 'gone' }));
  jot({ id: 'z', plan: named('z, later'), count: 5 }, 'gone');
  await find();
  expect((await db.get('plans', 'z'))?.plan.name).toBe('z, later');
  expect((await cardsOf(db)).map(({ name }) => name)).toContain('z, later');
  expect(readJournal(local, 'gone')).toBeNull();
});

test('where the browser cannot tell which tabs are gone, none is recovered', async () => {
  const { db, local, jot, find } = await leftBehind();
  vi.stubGlobal('navigator', {});
  jot({ id: 'z', plan: named('of a window that is open'), known: null, count: 5 }, 'other');
  await find();
  expect(await db.get('plans', 'z')).toBeUndefined();
  expect(readJournal(local, 'other')?.plan.name).toBe('of a window that is open');
});

const [minute, day] = [60_000, 24 * 3600 * 1000];

test('where the browser cannot tell, a journal goes once the database has its change, and not while it may be open', async () => {
  const { db, local, jot, find } = await leftBehind();
  vi.stubGlobal('navigator', {});
  await saveWork(db, workOf(newHistory(named('z'), 'z'), { tab: 'other', count: 5 }));
  const z = { id: 'z', plan: named('z'), count: 5 };
  jot({ ...z, time: Date.now() - minute / 2 }, 'other');
  await find();
  expect(readJournal(local, 'other')?.plan.name).toBe('z');
  jot({ ...z, time: Date.now() - 2 * minute }, 'other');
  await find();
  expect(readJournal(local, 'other')).toBeNull();
  // one more change, which the database has not
  jot({ ...z, plan: named('z, later'), count: 6, time: Date.now() - 29 * day }, 'other');
  await find();
  expect(readJournal(local, 'other')?.plan.name).toBe('z, later');
  expect((await db.get('plans', 'z'))?.plan.name).toBe('z');
});

test('where the browser cannot tell, what a tab has not saved for 30 days comes into the database, and its journal goes', async () => {
  const { db, local, jot, find } = await leftBehind();
  vi.stubGlobal('navigator', {});
  const time = Date.now() - 31 * day;
  await saveWork(db, workOf(newHistory(named('z'), 'z'), { tab: 'gone' }));
  jot({ id: 'z', plan: named('z, later'), count: 5, time }, 'gone');
  // changed on by another tab since
  jot({ plan: named('mine'), known: 0, count: 5, time }, 'long gone');
  // damaged, or of a newer Girthline in another window
  local.setItem('girthline.journal.newer', '{"id":"x","plan":{"format":"girthline"},"count":9}');
  await find();
  const names = (await cardsOf(db)).map(({ name }) => name);
  expect(names.sort()).toEqual(['first', 'mine, copy', 'z, later']);
  expect([readJournal(local, 'gone'), readJournal(local, 'long gone')]).toEqual([null, null]);
  expect(local.getItem('girthline.journal.newer')).not.toBeNull();
});

test('a change of a tab that is still open is left to it', async () => {
  const { db, local, jot, find } = await leftBehind();
  locks.add('girthline.tab.other');
  jot({ id: 'z', plan: named('of a window that is open'), known: null, count: 5 }, 'other');
  await find();
  expect(await db.get('plans', 'z')).toBeUndefined();
  expect(readJournal(local, 'other')?.plan.name).toBe('of a window that is open');
});

test('a demo that an older Girthline had at hand is looked at, and comes on no shelf', async () => {
  const db = await emptyShelf();
  const local = storage();
  keepDraft(local, plan);
  const { work, isUnsaved } = await findWork(db, local, storage());
  expect(work?.history.plan).toEqual(plan);
  expect(isUnsaved).toBe(false);
  keepDraft(local, named('somebody’s own'));
  expect((await findWork(db, local, storage())).isUnsaved).toBe(true);
});

test('a copy of a lost change takes no name that the shelf has', async () => {
  const { db, jot, find } = await leftBehind();
  await saveWork(db, workOf(newHistory(named('theirs'), 'x'), { tab: 'other', known: 1 }));
  await saveWork(db, workOf(newHistory(named('second, copy'), 'c'), { tab: 'other' }));
  jot({});
  expect((await find()).work?.history.plan.name).toBe('second, copy 2');
  jot({ plan: named('second') }, 'gone');
  await find();
  const names = (await cardsOf(db)).map(({ name }) => name);
  expect(names.sort()).toEqual(['second, copy', 'second, copy 2', 'theirs']);
});

test('a journal that is damaged, or of a plan that is none, is left out', async () => {
  const { local, jot, find } = await leftBehind();
  local.setItem('girthline.journal.tab', '{"id":"x","plan":{"format":"girthline"},"count":9}');
  expect((await find()).work?.history.plan.name).toBe('first');
  local.setItem('girthline.journal.tab', '{"id');
  expect((await find()).work?.history.plan.name).toBe('first');
  jot({});
  expect((await find()).work?.history.plan.name).toBe('second');
});

test('a plan at hand that this version cannot read stays on the shelf and is told', async () => {
  const { db, find } = await leftBehind();
  const record = await db.get('plans', 'x');
  const newer = { ...plan, version: 7 } as unknown as typeof plan;
  if (record) await db.put('plans', { ...record, plan: newer });
  const { work, problems } = await find();
  expect(work).toBeNull();
  expect(problems[0]).toMatchObject({ path: 'version', found: 'version 7' });
  expect((await db.get('plans', 'x'))?.plan).toEqual(newer);
});

test('steps across plans are there after a reload', async () => {
  const { db, find } = await leftBehind();
  let history = newHistory(named('first'), 'x');
  history = opened(history, named('other'), 'y', 'opening other');
  history = changed(history, named('other, wider'), 'wider', undefined, 0);
  await saveWork(db, workOf(history, { count: 3 }));
  const { work } = await find();
  expect(work?.history).toEqual(history);
  expect([...(work?.known.keys() ?? [])].sort()).toEqual(['x', 'y']);
});
