import { useSyncExternalStore } from 'react';

/** The part of the page's address after #, now and as it changes. */
export function useHash(): string {
  return useSyncExternalStore(subscribe, () => globalThis.location.hash);
}

function subscribe(onChange: () => void): () => void {
  globalThis.addEventListener('hashchange', onChange);
  return () => globalThis.removeEventListener('hashchange', onChange);
}
