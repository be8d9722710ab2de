/** A database of its own for each test, and what a tab with a plan at hand would save. */
import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import type { History } from '../../../src/keep/history.ts';
import { openShelf } from '../../../src/keep/shelf/openShelf.ts';
import type { ShelfDb } from '../../../src/keep/shelf/records.ts';
import type { Work } from '../../../src/keep/shelf/saveWork.ts';
import { stateRow } from '../../../src/keep/shelf/states.ts';

/** Opens a shelf that is empty. */
export async function emptyShelf(): Promise<ShelfDb> {
  globalThis.indexedDB = new IDBFactory();
  return sameShelf();
}

async function sameShelf(): Promise<ShelfDb> {
  const opening = await openShelf(() => {});
  if (opening.kind !== 'open') throw new Error(`the shelf is ${opening.kind}`);
  return opening.db;
}

/** What a tab saves of `history`. */
export function workOf(history: History, more: Partial<Work> = {}): Work {
  const { id, plan } = history;
  return {
    ...{ tab: 'tab', id, plan, row: stateRow(history), written: null, known: undefined },
    ...{ isWorkedOn: true, page: undefined, thumbnail: null, count: 1, now: 1000 },
    ...more,
  };
}

/** Everything that the database holds, store by store. */
export async function wholeShelf(db: ShelfDb): Promise<Record<string, readonly unknown[]>> {
  const names = [...db.objectStoreNames];
  const entries = names.map(async (name) => [name, await db.getAll(name)] as const);
  return Object.fromEntries(await Promise.all(entries));
}

/** A browser's plain storage. */
export function storage(): Storage {
  const held = new Map<string, string>();
  return {
    get length() {
      return held.size;
    },
    key: (at) => [...held.keys()][at] ?? null,
    getItem: (key) => held.get(key) ?? null,
    setItem: (key, text) => void held.set(key, text),
    removeItem: (key) => void held.delete(key),
    clear: () => held.clear(),
  };
}
