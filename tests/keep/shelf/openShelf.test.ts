import { openDB } from 'idb';
import { expect, test } from 'vitest';
import { openShelf } from '../../../src/keep/shelf/openShelf.ts';
import { addPlans } from '../../../src/keep/shelf/shelfPlans.ts';
import { demos } from '../../../src/plan/demo/demos.ts';
import { emptyShelf, wholeShelf } from './shelfDesk.ts';

test('a shelf that a newer Girthline has written is not opened and not touched', async () => {
  const db = await emptyShelf();
  await addPlans(db, [{ plan: demos[0].plan, versions: [], page: undefined }]);
  const before = await wholeShelf(db);
  db.close();
  (await openDB('girthline', 9)).close();
  expect(await openShelf(() => {})).toEqual({ kind: 'newer' });
  const newer = await openDB('girthline', 9);
  const after = [...newer.objectStoreNames].map(async (name) => [name, await newer.getAll(name)]);
  expect(Object.fromEntries(await Promise.all(after))).toEqual(before);
});

test('a browser without a database is told apart and is no error', async () => {
  await emptyShelf();
  Reflect.deleteProperty(globalThis, 'indexedDB');
  expect(await openShelf(() => {})).toEqual({ kind: 'none' });
});

test('a browser that refuses the database is told apart and is no error', async () => {
  await emptyShelf();
  const open = () => {
    throw new DOMException('not here', 'SecurityError');
  };
  Object.defineProperty(globalThis.indexedDB, 'open', { value: open });
  expect(await openShelf(() => {})).toEqual({ kind: 'none' });
});

test('a page that is older lets go of the shelf when a newer one opens it, and hears of it', async () => {
  await emptyShelf();
  const heard: string[] = [];
  const opening = await openShelf((why) => heard.push(why));
  expect(opening.kind).toBe('open');
  (await openDB('girthline', 9)).close();
  expect(heard).toEqual(['newer']);
});
