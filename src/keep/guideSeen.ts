/** Whether a newcomer has been greeted in this browser. */
import { browserStore } from './draft.ts';

const key = 'girthline.greeted';

/** True once the greeting was put away; true too where nothing can be kept, so that it never nags. */
export function isGreeted(): boolean {
  try {
    const store = browserStore();
    return store === null || store.getItem(key) !== null;
  } catch {
    return true;
  }
}

/** Keeps in mind that the greeting was put away. A browser that keeps nothing is not an error. */
export function keepGreeted(): void {
  try {
    browserStore()?.setItem(key, 'yes');
  } catch {}
}
