/** The shelf's database as it lies in the browser, read and filled from outside of the app. */
import type { Page } from 'playwright-core';
import type {
  Card,
  PlanRecord,
  StateRecord,
  TabRecord,
  VersionRecord,
} from '../../src/keep/shelf/records.ts';

export interface StoredShelf {
  readonly cards: readonly Card[];
  readonly plans: readonly PlanRecord[];
  readonly versions: readonly VersionRecord[];
  readonly tabs: readonly TabRecord[];
  readonly states: readonly StateRecord[];
}

/** Everything in the database, read in one transaction. */
export function storedShelf(page: Page): Promise<StoredShelf> {
  return page.evaluate(async () => {
    const asked = <T>(request: IDBRequest<T>) =>
      new Promise<T>((resolve, reject) => {
        request.onsuccess = () => resolve(request.result);
        request.onerror = () => reject(request.error);
      });
    const db = await asked(indexedDB.open('girthline'));
    const names = ['cards', 'plans', 'versions', 'tabs', 'states'] as const;
    const reading = db.transaction(names);
    const entries = names.map(async (name) => {
      return [name, await asked(reading.objectStore(name).getAll())] as const;
    });
    const stores = Object.fromEntries(await Promise.all(entries));
    db.close();
    return stores as unknown as StoredShelf;
  });
}

/** Puts plans and their cards in the database, as an earlier visit would have left them. */
export function fillShelf(
  page: Page,
  plans: readonly PlanRecord[],
  cards: readonly Card[],
): Promise<void> {
  return page.evaluate(
    async ([plans, cards]) => {
      const db = await new Promise<IDBDatabase>((resolve, reject) => {
        const request = indexedDB.open('girthline');
        request.onsuccess = () => resolve(request.result);
        request.onerror = () => reject(request.error);
      });
      const change = db.transaction(['plans', 'cards'], 'readwrite');
      for (const plan of plans) change.objectStore('plans').put(plan);
      for (const card of cards) change.objectStore('cards').put(card);
      await new Promise<void>((resolve, reject) => {
        change.oncomplete = () => resolve();
        change.onerror = () => reject(change.error);
      });
      db.close();
    },
    [plans, cards] as const,
  );
}
