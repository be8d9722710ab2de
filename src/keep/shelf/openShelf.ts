/** Opens the browser's database, or says why it cannot be had. */
import { openDB } from 'idb';
import type { ShelfDb, ShelfSchema } from './records.ts';

const databaseName = 'girthline';

/** Goes up with every change of what the database holds, and with every version of the document. */
const shelfVersion = 1;

/** A database that has not opened by then is held up by another page, ms. */
const patience = 2500;

export type Opening =
  | { readonly kind: 'open'; readonly db: ShelfDb }
  /** `none`: the browser has or allows no database. `newer`: a newer Girthline has written it. */
  | { readonly kind: 'none' | 'newer' | 'busy' };

/** The shelf's database. `onLost` is called when it is closed under us, as by a newer page. */
export async function openShelf(onLost: (why: 'newer' | 'none') => void): Promise<Opening> {
  if (!globalThis.indexedDB) return { kind: 'none' };
  try {
    const opening = openDB<ShelfSchema>(databaseName, shelfVersion, {
      upgrade(db) {
        db.createObjectStore('cards', { keyPath: 'id' });
        db.createObjectStore('plans', { keyPath: 'id' });
        db.createObjectStore('versions', { keyPath: 'number', autoIncrement: true }).createIndex(
          'of',
          'of',
        );
        db.createObjectStore('tabs', { keyPath: 'tab' });
        db.createObjectStore('states', { keyPath: ['tab', 'at'] });
        db.createObjectStore('bench', { keyPath: 'of' });
      },
      blocking(_current, _blocked, event) {
        (event.target as IDBDatabase).close();
        onLost('newer');
      },
      terminated: () => onLost('none'),
    });
    let timer: ReturnType<typeof setTimeout> | undefined;
    const late = new Promise<null>((resolve) => {
      timer = setTimeout(() => resolve(null), patience);
    });
    const db = await Promise.race([opening, late]);
    clearTimeout(timer);
    if (db) return { kind: 'open', db };
    opening.then((tooLate) => tooLate.close()).catch(() => {});
    return { kind: 'busy' };
  } catch (error) {
    return { kind: nameOf(error) === 'VersionError' ? 'newer' : 'none' };
  }
}

/** The name of what was thrown, such as `QuotaExceededError`. */
export function nameOf(error: unknown): string {
  return error instanceof Error || error instanceof DOMException ? error.name : '';
}
