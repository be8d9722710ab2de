import { expect, test } from 'vitest';
import { pageOf } from '../../../src/keep/benchBook.ts';
import { newHistory } from '../../../src/keep/history.ts';
import { nameOfCopy } from '../../../src/keep/shelf/copyName.ts';
import { saveWork } from '../../../src/keep/shelf/saveWork.ts';
import {
  addPlans,
  cardsOf,
  copyPlan,
  putBack,
  removePlan,
  renamePlan,
  replacePlan,
} from '../../../src/keep/shelf/shelfPlans.ts';
import { putBy, renameVersion, versionsOf } from '../../../src/keep/shelf/versions.ts';
import { demos } from '../../../src/plan/demo/demos.ts';
import { emptyShelf, wholeShelf, workOf } from './shelfDesk.ts';

const { plan } = demos[0];
const page = pageOf({}, 'x', { 3: 600 });

/** A shelf with one plan, a version of it and its bench. */
async function shelfWithOne() {
  const db = await emptyShelf();
  const old = { name: 'as taught', made: 5, plan: { ...plan, notes: 'old' } };
  const [id = ''] = await addPlans(db, [{ plan, versions: [old], page }]);
  return { db, id };
}

test('a plan that is deleted goes with its versions and its bench, and all of it can be put back', async () => {
  const { db, id } = await shelfWithOne();
  const before = await wholeShelf(db);
  const removed = await removePlan(db, id);
  if (!removed) throw new Error('nothing was removed');
  for (const store of Object.values(await wholeShelf(db))) expect(store).toEqual([]);
  await putBack(db, removed);
  expect(await wholeShelf(db)).toEqual(before);
});

test('a copy has a name of its own and its plan is the same', async () => {
  const { db, id } = await shelfWithOne();
  const [one, two] = [await copyPlan(db, id), await copyPlan(db, id)];
  const cards = await cardsOf(db);
  expect(cards.map(({ name }) => name).sort()).toEqual([
    'Orchard trug',
    'Orchard trug, copy',
    'Orchard trug, copy 2',
  ]);
  const copy = await db.get('plans', one ?? '');
  expect(copy?.plan).toEqual({ ...plan, name: 'Orchard trug, copy' });
  expect(one).not.toBe(two);
  expect(await copyPlan(db, 'none')).toBeUndefined();
});

test('a copy of a copy is not called a copy of a copy, and no name grows over 120 letters', () => {
  expect(nameOfCopy('Trug, copy', ['Trug, copy'])).toBe('Trug, copy 2');
  expect(nameOfCopy('x'.repeat(120), [])).toHaveLength(120);
});

test('a plan that is renamed is so on its card and in its document, and other tabs can tell', async () => {
  const { db, id } = await shelfWithOne();
  expect(await renamePlan(db, id, 'Plum trug')).toBe(2);
  expect((await db.get('plans', id))?.plan).toEqual({ ...plan, name: 'Plum trug' });
  expect(await db.get('cards', id)).toMatchObject({ name: 'Plum trug', revision: 2 });
  const late = await saveWork(db, workOf(newHistory({ ...plan, notes: 'x' }, id), { known: 1 }));
  expect(late.kind).toBe('clash');
});

test('a plan that is replaced stays among its own versions', async () => {
  const { db, id } = await shelfWithOne();
  const incoming = { ...plan, notes: 'from a file' };
  expect(await replacePlan(db, id, incoming)).toBe(2);
  expect((await db.get('plans', id))?.plan).toEqual(incoming);
  expect((await versionsOf(db, id))[0]).toMatchObject({ name: null, plan });
});

test('a version can be named, and those with a name stay when those without are too many', async () => {
  const { db, id } = await shelfWithOne();
  for (let n = 0; n < 70; n += 1) await putBy(db, id, null);
  await putBy(db, id, 'for the fair');
  const versions = await versionsOf(db, id);
  expect(versions).toHaveLength(62);
  const names = versions.flatMap(({ name }) => name ?? []);
  expect(names.sort()).toEqual(['as taught', 'for the fair']);
  const unnamed = versions.find(({ name }) => name === null);
  await renameVersion(db, unnamed?.number ?? 0, 'kept');
  expect((await versionsOf(db, id)).filter(({ name }) => name === 'kept')).toHaveLength(1);
});

test('cards come with the latest changed first, and every one has a picture', async () => {
  const db = await emptyShelf();
  await saveWork(db, workOf(newHistory(plan, 'old'), { now: 1 }));
  await saveWork(db, workOf(newHistory(demos[1]?.plan ?? plan, 'new'), { now: 2 }));
  const cards = await cardsOf(db);
  expect(cards.map(({ id }) => id)).toEqual(['new', 'old']);
  for (const { thumbnail } of cards) {
    expect(thumbnail?.body).toMatch(/^M[\d. ]+(L[\d. ]+){3,}Z$/);
    expect((thumbnail?.body.length ?? 0) + (thumbnail?.rows.length ?? 0)).toBeLessThan(4000);
  }
});
