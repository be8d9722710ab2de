/** What a page finds when it is opened, all of it: from the database, the journals, and older Girthlines. */
import { keepingWords } from '#words/keeping.ts';
import type { Problem } from '../../plan/problems.ts';
import type { History } from '../history.ts';
import { newHistory, opened } from '../history.ts';
import type { CarriedOver } from './carryOver.ts';
import type { JournalStore } from './journal.ts';
import { readJournal, tabsInJournal } from './journal.ts';
import type { FoundWork } from './readWork.ts';
import { lastTab, readWork } from './readWork.ts';
import type { ShelfDb } from './records.ts';
import { nameOfTab } from './tabLock.ts';

export interface Found {
  readonly tab: string;
  /** Null for a browser that Girthline is new to. */
  readonly work: FoundWork | null;
  /** True where something of it is not yet in the database. */
  readonly isUnsaved: boolean;
  /** What is wrong with the plan that was at hand, where this version cannot read it. */
  readonly problems: readonly Problem[];
}

/** Finds what this tab left. `local` outlives the tab, `ofTab` outlives its reloads. */
export async function findWork(
  db: ShelfDb,
  local: JournalStore | null,
  ofTab: Pick<Storage, 'getItem' | 'setItem'> | null,
): Promise<Found> {
  const tab = await nameOfTab(ofTab, async () => (await lastTab(db))?.tab);
  // a full disk must not stop the page: then it all stays where it was
  const carried = await carriedOver(db, local).catch(() => null);
  // what reads journals is fetched where there are any: after a crash, or with other windows open
  const isJotted = tabsInJournal(local).length > 0;
  const journals = isJotted ? await import('./recover.ts').catch(() => null) : null;
  await journals?.recoverLost(db, local, tab).catch(() => {});
  const kept = await readWork(db, tab);
  const problems = Array.isArray(kept) ? kept : [];
  const before = kept && 'history' in kept ? withCarried(kept, carried) : carriedOnly(carried);
  const entry = readJournal(local, tab);
  const work = journals ? await journals.withJournal(db, tab, entry, before) : before;
  // a demo that was only looked at comes over as that: it goes on no shelf
  const isLookedAt = work === before && carried !== null && carried.revision === undefined;
  return { tab, work, isUnsaved: work !== null && work !== kept && !isLookedAt, problems };
}

/** What an older Girthline has left, where it has left something; what reads it is fetched then only. */
async function carriedOver(db: ShelfDb, local: JournalStore | null): Promise<CarriedOver | null> {
  const keys = ['girthline.draft', 'girthline.aside', 'girthline.bench'];
  if (keys.every((key) => local?.getItem(key) == null)) return null;
  const { carryOver } = await import('./carryOver.ts');
  return carryOver(db, local);
}

function withCarried(work: FoundWork, carried: CarriedOver | null): FoundWork {
  if (!carried) return work;
  const { history } = work;
  const more = found(
    carried,
    opened(history, carried.plan, carried.id, keepingWords.steps.openingIt),
  );
  const known = new Map([...work.known, ...more.known]);
  return { ...work, history: more.history, known, pages: { ...work.pages, ...more.pages } };
}

function carriedOnly(carried: CarriedOver | null): FoundWork | null {
  if (!carried) return null;
  return { written: null, count: 0, ...found(carried, newHistory(carried.plan, carried.id)) };
}

function found({ id, revision, page }: CarriedOver, history: History) {
  const known = new Map(revision === undefined ? [] : [[id, revision] as const]);
  return { history, known, plans: new Map(), pages: page ? { [id]: page } : {} };
}
