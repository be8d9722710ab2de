/** What the browser's database holds, store by store. */
import type { DBSchema, IDBPDatabase, IDBPTransaction, StoreNames } from 'idb';
import type { Thumbnail } from '../../mesh/thumbnailBox.ts';
import type { Plan } from '../../plan/schema.ts';
import type { BenchPage } from '../benchBook.ts';

/** What the shelf shows of a plan, so that it need not read them all. Times are ms since 1970. */
export interface Card {
  readonly id: string;
  readonly name: string;
  /** The beginning of its notes, for searching. */
  readonly notes: string;
  readonly made: number;
  readonly updated: number;
  /** The same as in the plan's record. */
  readonly revision: number;
  /** When its newest version of itself was put by; 0 where there is none. */
  readonly versioned: number;
  readonly thumbnail: Thumbnail | null;
}

export interface PlanRecord {
  readonly id: string;
  readonly plan: Plan;
  /** Counts the times it, or its page of the bench, was written. */
  readonly revision: number;
  /** The tab that wrote it last; empty where it came from the shelf itself. */
  readonly by: string;
}

export interface VersionRecord {
  /** Given by the database, growing. */
  readonly number: number;
  /** The plan it is a version of. */
  readonly of: string;
  /** Null for one put by without being asked for. */
  readonly name: string | null;
  readonly made: number;
  readonly plan: Plan;
  readonly thumbnail: Thumbnail | null;
}

/** One of the plans that undo and redo go through, by tab and place. */
export interface StateRecord {
  readonly tab: string;
  readonly at: number;
  readonly id: string;
  readonly plan: Plan;
  /** What was done to come here from the one before; empty for the first. */
  readonly label: string;
}

/** Where a tab stands among its states. */
export interface TabRecord {
  readonly tab: string;
  readonly first: number;
  readonly cursor: number;
  readonly last: number;
  /** Counts the tab's changes; what its journal holds is newer if it has counted further. */
  readonly count: number;
  /** ms since 1970. */
  readonly saved: number;
}

export interface BenchEntry {
  /** The plan's id, or `name:` and its name where it came from an older Girthline. */
  readonly of: string;
  readonly page: BenchPage;
}

/** Everything of a plan, so that it can be put back. */
export interface Removed {
  readonly record: PlanRecord;
  readonly card: Card;
  readonly versions: readonly VersionRecord[];
  readonly bench: BenchEntry | undefined;
}

export interface ShelfSchema extends DBSchema {
  cards: { key: string; value: Card };
  plans: { key: string; value: PlanRecord };
  versions: { key: number; value: VersionRecord; indexes: { of: string } };
  tabs: { key: string; value: TabRecord };
  states: { key: [string, number]; value: StateRecord };
  bench: { key: string; value: BenchEntry };
}

export type ShelfDb = IDBPDatabase<ShelfSchema>;

type StoreName = StoreNames<ShelfSchema>;

/** Everything that belongs to a plan or a tab, for changes that are made whole or not at all. */
export const allStores: StoreName[] = ['plans', 'cards', 'versions', 'tabs', 'states', 'bench'];

/** A change of the shelf, over all of its stores. */
export type Change = IDBPTransaction<ShelfSchema, StoreName[], 'readwrite'>;
