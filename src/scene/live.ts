import { useSyncExternalStore } from 'react';

/** A value that changes from outside, and who is told of it. */
export interface Live<T> {
  readonly get: () => T;
  readonly set: (value: T) => void;
  readonly subscribe: (tell: () => void) => () => void;
}

/** A live value that begins as `first`. */
export function live<T>(first: T): Live<T> {
  let now = first;
  const told = new Set<() => void>();
  return {
    get: () => now,
    set(value) {
      now = value;
      for (const tell of told) tell();
    },
    subscribe(tell) {
      told.add(tell);
      return () => told.delete(tell);
    },
  };
}

/** What `source` is now; the component is drawn anew when it changes, and nothing above it. */
export function useLive<T>(source: Live<T>): T {
  return useSyncExternalStore(source.subscribe, source.get, source.get);
}

/** What `pick` takes from `source`; the component is drawn anew only when that changes. */
export function usePicked<T, P>(source: Live<T>, pick: (value: T) => P): P {
  const get = () => pick(source.get());
  return useSyncExternalStore(source.subscribe, get, get);
}
