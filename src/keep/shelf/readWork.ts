/** What a tab finds when it is opened: its plan, what can be undone, and its pages of the bench. */
import { keepingWords } from '#words/keeping.ts';
import type { Problem } from '../../plan/problems.ts';
import { checkPlan } from '../../plan/read.ts';
import type { Plan } from '../../plan/schema.ts';
import type { BenchPage } from '../benchBook.ts';
import { readPage } from '../benchBook.ts';
import type { History } from '../history.ts';
import { newHistory, opened } from '../history.ts';
import { isSame } from './isSame.ts';
import type { ShelfDb, TabRecord } from './records.ts';
import type { StateRow } from './states.ts';
import { historyOf, rowOf } from './states.ts';

export interface FoundWork {
  readonly history: History;
  /** The row of states as the database has it; null where it has none for this tab. */
  readonly written: StateRow | null;
  /** How many changes the tab had counted. */
  readonly count: number;
  /** Revisions of the plans of the history that are on the shelf. */
  readonly known: ReadonlyMap<string, number>;
  /** The plans that have these revisions. */
  readonly plans: ReadonlyMap<string, Plan>;
  /** Pages of the bench by the plan's id. */
  readonly pages: Readonly<Record<string, BenchPage>>;
}

/**
 * What `tab` left; for a tab that left nothing, the plan that was last worked on; null where there is
 * none. Or the problems of a plan that this version cannot read; it stays on the shelf as it is.
 */
export async function readWork(
  db: ShelfDb,
  tab: string,
): Promise<FoundWork | readonly Problem[] | null> {
  const record = await db.get('tabs', tab);
  const written = record ? await rowOfTab(db, record) : null;
  const found = (written && historyOf(written)) ?? (await lastPlan(db));
  if (!found) return null;
  const kept = await db.get('plans', found.id);
  const reading = checkPlan(kept?.plan ?? found.plan, keepingWords.planOnShelf);
  if (!reading.ok) return reading.problems;
  const isAsLeft = isSame(reading.plan, found.plan);
  const history = isAsLeft
    ? found
    : opened(found, reading.plan, found.id, keepingWords.steps.changedElsewhere);
  return {
    history,
    written,
    count: record?.count ?? 0,
    ...(await companions(db, history)),
  };
}

async function companions(db: ShelfDb, history: History) {
  const known = new Map<string, number>();
  const plans = new Map<string, Plan>();
  const pages: Record<string, BenchPage> = {};
  const ids = new Set([history, ...history.past, ...history.future].map(({ id }) => id));
  for (const id of ids) {
    const record = await db.get('plans', id);
    // one that another tab has changed since is not known: undoing back to it asks
    if (record && leftAs(history, id).some((plan) => isSame(plan, record.plan))) {
      known.set(id, record.revision);
      plans.set(id, record.plan);
    }
    const page = await pageOfPlan(db, id, id === history.id ? history.plan.name : undefined);
    if (page) pages[id] = page;
  }
  return { known, plans, pages };
}

/** A plan of the history as it was when another one took its place: nearest before now, and after. */
function leftAs(history: History, id: string): readonly Plan[] {
  const isOfPlan = (step: { readonly id: string }) => step.id === id;
  const nearest = [history.past.findLast(isOfPlan), history.future.findLast(isOfPlan)];
  const own = history.id === id ? [history.plan] : [];
  return [...own, ...nearest.flatMap((step) => (step ? [step.plan] : []))];
}

/** The page of the bench that a plan has, or one that came by its name from an older Girthline. */
export async function pageOfPlan(
  db: ShelfDb,
  id: string,
  name: string | undefined,
): Promise<BenchPage | undefined> {
  const own = await db.get('bench', id);
  const entry = own ?? (name === undefined ? undefined : await db.get('bench', `name:${name}`));
  return entry && readPage(entry.page);
}

async function rowOfTab(db: ShelfDb, record: TabRecord): Promise<StateRow | null> {
  const { tab, first, last } = record;
  const states = await db.getAll('states', IDBKeyRange.bound([tab, first], [tab, last]));
  return rowOf(record, states);
}

/** The tab that saved last; undefined where none has. */
export async function lastTab(db: ShelfDb): Promise<TabRecord | undefined> {
  const tabs = await db.getAll('tabs');
  const first = tabs.filter(({ tab }) => !tab.endsWith(secondOf('')));
  return first.toSorted((one, other) => other.saved - one.saved)[0];
}

async function lastPlan(db: ShelfDb): Promise<History | null> {
  const record = await lastTab(db);
  const row = record ? await rowOfTab(db, record) : null;
  const history = row && historyOf(row);
  return history && newHistory(history.plan, history.id);
}

/** The name under which a tab keeps its second plan, that of the comparison. */
export function secondOf(tab: string): string {
  return `${tab}.second`;
}

/** So many tabs that were left keep what can be undone in them. */
const mostTabs = 12;

/** Lets go of what tabs left that were not used for longest. One still open writes all of it again. */
export async function clearOldTabs(db: ShelfDb): Promise<void> {
  const tabs = (await db.getAll('tabs')).toSorted((one, other) => other.saved - one.saved);
  const change = db.transaction(['tabs', 'states'], 'readwrite');
  for (const { tab } of tabs.slice(mostTabs)) {
    await change.objectStore('tabs').delete(tab);
    await change
      .objectStore('states')
      .delete(IDBKeyRange.bound([tab, 0], [tab, Number.MAX_SAFE_INTEGER]));
  }
  await change.done;
}
