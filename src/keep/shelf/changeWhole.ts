import type { Change, ShelfDb } from './records.ts';
import { allStores } from './records.ts';

/**
 * Makes a change of the shelf as one transaction: all of it is done, or nothing is. Rejects with what
 * the browser said, such as a `QuotaExceededError`.
 */
export async function changeWhole<T>(
  db: ShelfDb,
  make: (change: Change) => Promise<T>,
): Promise<T> {
  const change = db.transaction(allStores, 'readwrite', { durability: 'strict' });
  const ended = change.done.then(
    () => null,
    (why: unknown) => ({ why }),
  );
  try {
    const made = await make(change);
    await change.done;
    return made;
  } catch (error) {
    try {
      change.abort();
    } catch {
      // it has ended by itself
    }
    // why the transaction ended says more than that a request in it failed
    const end = await ended;
    throw change.error ?? end?.why ?? error;
  }
}
