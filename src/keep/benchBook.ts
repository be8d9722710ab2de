/** The book of the bench: for each plan the baskets made from it. */
import { keepingWords } from '#words/keeping.ts';
import type { Measures } from '../plan/measures.ts';
import { beyond } from '../plan/measures.ts';
import type { BenchRecord } from './benchRecord.ts';
import { newRecord, readRecord } from './benchRecord.ts';
import type { DraftStore } from './draft.ts';

const key = 'girthline.bench';

export interface BenchPage {
  /** The record at hand. */
  readonly chosen: string;
  readonly records: readonly BenchRecord[];
}

/** Pages by the plan's id on the shelf; in books of older Girthlines by its name. */
export type BenchBook = Readonly<Record<string, BenchPage>>;

/** The page of a plan; a new one with one basket, that has what was measured so far, where none is kept. */
export function pageOf(book: BenchBook, plan: string, girths: BenchRecord['girths']): BenchPage {
  const page = Object.hasOwn(book, plan) ? book[plan] : undefined;
  return page ?? { chosen: '1', records: [newRecord('1', keepingWords.basket(1), girths)] };
}

/** The record at hand on a page. */
export function chosenRecord({ chosen, records }: BenchPage): BenchRecord {
  return (
    records.find(({ id }) => id === chosen) ??
    records[0] ??
    newRecord('1', keepingWords.basket(1), {})
  );
}

/**
 * The page with what its record at hand has measured taken from the plan, which may have been undone or
 * opened anew; rows over the plan's last (added at the bench) stay as they are.
 */
export function withMeasured(page: BenchPage, rows: number, measures: Measures): BenchPage {
  const { girths, across } = chosenRecord(page);
  return withChange(page, {
    girths: { ...measures.girths, ...beyond(rows, girths) },
    across: { ...measures.across, ...beyond(rows, across) },
  });
}

/** The page with its record at hand changed. */
export function withChange(page: BenchPage, change: Partial<BenchRecord>): BenchPage {
  const { id } = chosenRecord(page);
  const records = page.records.map((one) => (one.id === id ? { ...one, ...change } : one));
  return { chosen: id, records };
}

/** The page with one more basket, which is then at hand. */
export function withNewRecord(page: BenchPage): BenchPage {
  const number = 1 + Math.max(0, ...page.records.map(({ id }) => Number(id) || 0));
  const record = newRecord(`${number}`, keepingWords.basket(number), {});
  return { chosen: record.id, records: [...page.records, record] };
}

/** The book that an older Girthline kept in the browser's plain storage; an empty one where there is none. */
export function keptBook(store: DraftStore | null): BenchBook {
  try {
    const pages = entriesIn(store).map(([plan, page]) => [plan, readPage(page)] as const);
    return Object.fromEntries(pages.filter((entry): entry is [string, BenchPage] => !!entry[1]));
  } catch {
    return {};
  }
}

/** Forgets the book, once its pages are on the shelf; what this version cannot read stays. */
export function forgetBook(store: DraftStore | null): void {
  try {
    const unread = entriesIn(store).filter(([, page]) => !readPage(page));
    if (unread.length > 0) store?.setItem(key, JSON.stringify(Object.fromEntries(unread)));
    else store?.removeItem(key);
  } catch {}
}

/** The pages as they are kept. Throws for what is no book, and where the storage may not be used. */
function entriesIn(store: DraftStore | null): readonly [string, unknown][] {
  const kept: unknown = JSON.parse(store?.getItem(key) ?? '{}');
  if (typeof kept !== 'object' || kept === null) throw new Error('no book');
  return Object.entries(kept);
}

/** A page from what was kept, whatever was kept; undefined if it is none. */
export function readPage(kept: unknown): BenchPage | undefined {
  if (typeof kept !== 'object' || kept === null) return undefined;
  const { chosen, records }: { chosen?: unknown; records?: unknown } = kept;
  if (!Array.isArray(records) || records.length === 0) return undefined;
  const read = records.map((one, index) =>
    readRecord(one, `${index + 1}`, keepingWords.basket(index + 1)),
  );
  return { chosen: String(chosen), records: read };
}
