/** Which tab this is: the name it had before a reload, unless another tab has it. */
import { newId } from '../newId.ts';

const key = 'girthline.tab';

/** A reload may come before the page it replaces has let go, ms. */
const patience = 600;

/**
 * The tab's name, held until the page goes. It is the one of before a reload or a crash; a tab that is
 * new takes over `left`, where an earlier one left off that is gone now.
 */
export async function nameOfTab(
  store: Pick<Storage, 'getItem' | 'setItem'> | null,
  left: () => Promise<string | undefined>,
): Promise<string> {
  const before = read(store);
  const mine = before !== null && (await isMine(before, patience)) ? before : await taken(left);
  try {
    store?.setItem(key, mine);
  } catch {}
  return mine;
}

async function taken(left: () => Promise<string | undefined>): Promise<string> {
  const last = await left();
  if (last !== undefined && hasLocks() && (await isMine(last, 0))) return last;
  const fresh = newId();
  await isMine(fresh, 0);
  return fresh;
}

/** Whether a tab of this name is gone; null where the browser cannot tell, as on a page without https. */
export async function isGone(tab: string): Promise<boolean | null> {
  if (!hasLocks()) return null;
  return navigator.locks.request(lockOf(tab), { ifAvailable: true }, (lock) => lock !== null);
}

/** Takes the name and keeps it while the page lives; false where another tab has it. */
function isMine(tab: string, wait: number): Promise<boolean> {
  if (!hasLocks()) return Promise.resolve(true);
  return new Promise((resolve) => {
    const options = wait > 0 ? { signal: AbortSignal.timeout(wait) } : { ifAvailable: true };
    const held = navigator.locks.request(lockOf(tab), options, (lock) => {
      resolve(lock !== null);
      return lock ? new Promise(() => {}) : undefined;
    });
    held.catch(() => resolve(false));
  });
}

function hasLocks(): boolean {
  return typeof navigator !== 'undefined' && 'locks' in navigator && Boolean(navigator.locks);
}

function lockOf(tab: string): string {
  return `girthline.tab.${tab}`;
}

function read(store: Pick<Storage, 'getItem'> | null): string | null {
  try {
    return store?.getItem(key) ?? null;
  } catch {
    return null;
  }
}
