/** Changes that a tab had in its journal and not yet in the database when it was killed. */
import { sketch } from '../../mesh/sketch.ts';
import { demos } from '../../plan/demo/demos.ts';
import type { Plan } from '../../plan/schema.ts';
import type { History } from '../history.ts';
import { changed, newHistory, opened } from '../history.ts';
import { newId } from '../newId.ts';
import { cardOf } from './card.ts';
import { changeWhole } from './changeWhole.ts';
import { nameOfCopy } from './copyName.ts';
import { isSame } from './isSame.ts';
import type { JournalEntry, JournalStore } from './journal.ts';
import { clearJournal, readJournal, tabsInJournal } from './journal.ts';
import type { FoundWork } from './readWork.ts';
import type { Card, PlanRecord, ShelfDb } from './records.ts';
import { historyOf, withTail } from './states.ts';
import { isGone } from './tabLock.ts';

/** What `tab` left, with the change of its journal where that is newer. */
export async function withJournal(
  db: ShelfDb,
  tab: string,
  entry: JournalEntry | null,
  found: FoundWork | null,
): Promise<FoundWork | null> {
  if (!entry || (found?.written && entry.count <= found.count)) return found;
  const record = await db.get('plans', entry.id);
  const isMine = isOf(tab, entry, record);
  const id = isMine ? entry.id : newId();
  const plan = isMine ? entry.plan : asCopy(entry.plan, await db.getAll('cards'));
  const { page, label, count } = entry;
  const before = found?.history;
  const next = () => {
    const whole = isMine && tailed(entry, found);
    if (whole) return whole;
    if (!before) return newHistory(plan, id);
    if (before.id !== id) return opened(before, plan, id, label);
    return isSame(before.plan, plan) ? before : changed(before, plan, label, undefined, 0);
  };
  const known = new Map(found?.known);
  if (isMine && record) known.set(id, record.revision);
  return {
    history: next(),
    written: found?.written ?? null,
    count,
    known,
    plans: found?.plans ?? new Map(),
    pages: { ...found?.pages, ...(page && { [id]: page }) },
  };
}

/** The history with the journal's undo and redo; null where they do not fit the plan or the database. */
function tailed({ id, plan, tail }: JournalEntry, found: FoundWork | null): History | null {
  const row = tail && withTail(found?.written ?? null, tail);
  const history = row && historyOf(row);
  return history?.id === id && isSame(history.plan, plan) ? history : null;
}

/**
 * Where the browser cannot tell which tabs are gone, a change that the database has too stays so long,
 * ms: its tab would have taken it away within a second.
 */
const restWhereSaved = 60_000;

/** So long after its last change, ms, a tab that the browser cannot tell of is taken to be gone. */
const longestUnsaved = 30 * 24 * 3600 * 1000;

/** Brings the last changes of tabs that are gone for good into the database, and clears their journals. */
export async function recoverLost(
  db: ShelfDb,
  store: JournalStore | null,
  own: string,
): Promise<void> {
  for (const tab of tabsInJournal(store)) {
    const isKnownGone = tab === own ? false : await isGone(tab);
    if (isKnownGone === false) continue;
    const entry = readJournal(store, tab);
    const kept = (await db.get('tabs', tab))?.count ?? -1;
    const isSaved = entry === null || entry.count <= kept;
    if (!isKnownGone && !isOlder(entry, isSaved ? restWhereSaved : longestUnsaved)) continue;
    if (!isSaved) await recover(db, tab, entry);
    // one that is open after all may have written another one meanwhile
    if (readJournal(store, tab)?.time === entry?.time) clearJournal(store, tab);
  }
}

/** Whether a change was written more than `age` ago, ms. One that cannot be read may be of a newer Girthline. */
function isOlder(entry: JournalEntry | null, age: number): boolean {
  return entry !== null && Date.now() - entry.time > age;
}

async function recover(db: ShelfDb, tab: string, entry: JournalEntry): Promise<void> {
  await changeWhole(db, async (change) => {
    const plans = change.objectStore('plans');
    const record = await plans.get(entry.id);
    if (record && isSame(record.plan, entry.plan)) return;
    if (!record && demos.some(({ plan }) => isSame(plan, entry.plan))) return;
    const isMine = isOf(tab, entry, record);
    const id = isMine ? entry.id : newId();
    const cards = change.objectStore('cards');
    const plan = isMine ? entry.plan : asCopy(entry.plan, await cards.getAll());
    const revision = (isMine && record ? record.revision : 0) + 1;
    const card = await cards.get(id);
    await plans.put({ id, plan, revision, by: tab });
    const fresh = cardOf(id, plan, Date.now());
    const { made, versioned } = card ?? fresh;
    const thumbnail = sketch(plan);
    await cards.put({ ...fresh, made, versioned, thumbnail, revision });
    if (entry.page) await change.objectStore('bench').put({ of: id, page: entry.page });
  });
}

/** Whether nobody else has changed the plan since: the database has it as the tab knew or wrote it. */
function isOf(tab: string, { known }: JournalEntry, record: PlanRecord | undefined): boolean {
  if (!record) return known === null;
  return record.by === tab || record.revision === known;
}

function asCopy(plan: Plan, cards: readonly Card[]): Plan {
  return {
    ...plan,
    name: nameOfCopy(
      plan.name,
      cards.map(({ name }) => name),
    ),
  };
}
