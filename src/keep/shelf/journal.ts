/**
 * The latest change of each tab in the browser's plain storage, which is written at once: what is there
 * when a tab is killed between a change and its place in the database.
 */
import { keepingWords } from '#words/keeping.ts';
import { checkPlan } from '../../plan/read.ts';
import type { Plan } from '../../plan/schema.ts';
import type { BenchPage } from '../benchBook.ts';
import { readPage } from '../benchBook.ts';
import type { DraftStore } from '../draft.ts';
import type { State, Tail } from './states.ts';

const prefix = 'girthline.journal.';

export interface JournalEntry {
  readonly id: string;
  readonly plan: Plan;
  /** What the change did. */
  readonly label: string;
  /** The revision it was made on; null for a plan that was not on the shelf. */
  readonly known: number | null;
  readonly page: BenchPage | null;
  /** Counts the tab's changes. */
  readonly count: number;
  /** When it was written, ms since 1970; 0 where that is not told. */
  readonly time: number;
  /** What can be undone and redone beyond what the database has; null where that is too much. */
  readonly tail: Tail | null;
}

/** So many plans at most are written at each change. */
export const longestTail = 12;

/** The part of the browser's storage that the journal uses. */
export type JournalStore = DraftStore & Pick<Storage, 'key' | 'length'>;

/** Writes the latest change of a tab. A browser that refuses is no error: the database is the keeper. */
export function writeJournal(store: JournalStore | null, tab: string, entry: JournalEntry): void {
  try {
    store?.setItem(prefix + tab, JSON.stringify(entry));
  } catch {
    // a page left over from before would be older than the database
    clearJournal(store, tab);
  }
}

/** Takes a tab's change away, once the database has it. */
export function clearJournal(store: JournalStore | null, tab: string): void {
  try {
    store?.removeItem(prefix + tab);
  } catch {}
}

/** A tab's change that may not have come into the database; null where there is none. */
export function readJournal(store: JournalStore | null, tab: string): JournalEntry | null {
  try {
    return entryOf(JSON.parse(store?.getItem(prefix + tab) ?? 'null'));
  } catch {
    return null;
  }
}

/** The tabs that have left a change. */
export function tabsInJournal(store: JournalStore | null): readonly string[] {
  try {
    const keys = Array.from({ length: store?.length ?? 0 }, (_, at) => store?.key(at) ?? '');
    return keys.filter((key) => key.startsWith(prefix)).map((key) => key.slice(prefix.length));
  } catch {
    return [];
  }
}

function entryOf(value: Partial<Record<keyof JournalEntry, unknown>> | null): JournalEntry | null {
  if (typeof value !== 'object' || value === null || typeof value.id !== 'string') return null;
  const reading = checkPlan(value.plan, '');
  if (!reading.ok) return null;
  return {
    id: value.id,
    plan: reading.plan,
    label: typeof value.label === 'string' ? value.label : keepingWords.steps.change,
    known: typeof value.known === 'number' ? value.known : null,
    page: readPage(value.page) ?? null,
    count: typeof value.count === 'number' ? value.count : 0,
    time: typeof value.time === 'number' ? value.time : 0,
    tail: tailFrom(value.tail),
  };
}

function tailFrom(value: unknown): Tail | null {
  const { from, cursor, states } = (value ?? {}) as Partial<Record<keyof Tail, unknown>>;
  if (typeof from !== 'number' || typeof cursor !== 'number' || !Array.isArray(states)) return null;
  const read: State[] = [];
  for (const one of states.slice(0, longestTail) as Partial<Record<keyof State, unknown>>[]) {
    const reading = checkPlan(one?.plan, '');
    if (!reading.ok || typeof one.id !== 'string' || typeof one.label !== 'string') return null;
    read.push({ id: one.id, plan: reading.plan, label: one.label });
  }
  return { from, cursor, states: read };
}
