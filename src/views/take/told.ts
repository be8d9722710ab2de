/** What came of taking files in, kept for the shelf to say. */
import { useSyncExternalStore } from 'react';

export interface Told {
  /** In words; empty where nothing was done. */
  readonly done: string;
  /** One for each thing that was refused. */
  readonly problems: readonly string[];
}

let told: Told | null = null;
const listeners = new Set<() => void>();

/** Has the shelf say it; null takes it away. */
export function tellOnShelf(now: Told | null): void {
  told = now;
  for (const listener of listeners) listener();
}

/** What the shelf is to say; null for nothing. */
export function useTold(): Told | null {
  return useSyncExternalStore(subscribe, () => told);
}

function subscribe(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}
