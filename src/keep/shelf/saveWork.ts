/** Writes what a tab has at hand in one transaction: after a kill it is all there, or none of it. */
import { sketch } from '../../mesh/sketch.ts';
import type { Thumbnail } from '../../mesh/thumbnailBox.ts';
import type { Plan } from '../../plan/schema.ts';
import type { BenchPage } from '../benchBook.ts';
import { cardOf } from './card.ts';
import { changeWhole } from './changeWhole.ts';
import { isSame } from './isSame.ts';
import type { Change, PlanRecord, ShelfDb } from './records.ts';
import type { State, StateRow } from './states.ts';
import { putVersion } from './versions.ts';

export interface Work {
  readonly tab: string;
  readonly id: string;
  readonly plan: Plan;
  /** Counts the tab's changes. */
  readonly count: number;
  readonly row: StateRow;
  /** The row as it was last written by this tab; null if it never was. */
  readonly written: StateRow | null;
  /** Revision of the plan that this tab has read or written; undefined if it is not on the shelf. */
  readonly known: number | undefined;
  /** False for a plan that was only looked at: it does not go on the shelf. */
  readonly isWorkedOn: boolean;
  readonly page: BenchPage | undefined;
  /** The outline of the settled basket; null where it has not settled. */
  readonly thumbnail: Thumbnail | null;
  /** ms since 1970. */
  readonly now: number;
}

export type Saving =
  /** `revision` is undefined where the plan did not go on the shelf. */
  | { readonly kind: 'saved'; readonly revision: number | undefined; readonly isNew: boolean }
  /** Another tab has changed the plan, or deleted it (null). The tab's own row of plans is written. */
  | { readonly kind: 'clash'; readonly theirs: TheirPlan | null };

/** A plan as another tab has left it. */
export type TheirPlan = PlanRecord & { readonly page: BenchPage | undefined };

/** So long after the last one, or the plan's beginning, a version is put by before a change, ms. */
const timeBetweenVersions = 10 * 60_000;

/** Writes `work`. Rejects where the browser refuses, and then nothing is written. */
export async function saveWork(db: ShelfDb, work: Work): Promise<Saving> {
  return changeWhole(db, async (change) => {
    await saveRow(change, work);
    return savePlan(change, work);
  });
}

async function savePlan(change: Change, work: Work): Promise<Saving> {
  const { id, plan, page, known, now, thumbnail } = work;
  const record = await change.objectStore('plans').get(id);
  if (!record) {
    if (known !== undefined) return { kind: 'clash', theirs: null };
    if (!work.isWorkedOn) return { kind: 'saved', revision: undefined, isNew: false };
  }
  const cards = change.objectStore('cards');
  const bench = change.objectStore('bench');
  const card = record && (await cards.get(id));
  const keptPage = (await bench.get(id))?.page;
  if (record && card && isSame(record.plan, plan) && (!page || isSame(keptPage, page))) {
    if (thumbnail && !isSame(card.thumbnail, thumbnail)) await cards.put({ ...card, thumbnail });
    return { kind: 'saved', revision: record.revision, isNew: false };
  }
  if (record && record.revision !== known) {
    return { kind: 'clash', theirs: { ...record, page: keptPage } };
  }
  let versioned = card?.versioned ?? 0;
  const since = Math.max(versioned, card?.made ?? now);
  if (record && card && now - since > timeBetweenVersions && !isSame(record.plan, plan)) {
    await putVersion(change, { of: id, name: null, made: card.updated, plan: record.plan }, card);
    versioned = now;
  }
  const revision = (record?.revision ?? 0) + 1;
  await change.objectStore('plans').put({ id, plan, revision, by: work.tab });
  await cards.put({
    ...cardOf(id, plan, now),
    made: card?.made ?? now,
    revision,
    versioned,
    thumbnail: thumbnail ?? card?.thumbnail ?? sketch(plan),
  });
  if (page) {
    await bench.put({ of: id, page });
    // a page that came by the plan's name from an older Girthline now belongs to this plan
    const named = await bench.get(`name:${plan.name}`);
    if (named && holds(page, named.page)) await bench.delete(named.of);
  }
  return { kind: 'saved', revision, isNew: record === undefined };
}

/** Whether all that an older page has measured is on `page` too: it was taken over, and not begun anew. */
function holds(page: BenchPage, older: BenchPage): boolean {
  return older.records.every((record) => {
    const own = page.records.find(({ id }) => id === record.id);
    const rows = Object.keys(record.girths);
    // without measurements a page begun anew looks the same, unless nothing at all has changed
    if (!own || rows.length === 0) return own !== undefined && isSame(own, record);
    return rows.every((row) => row in own.girths);
  });
}

async function saveRow(change: Change, { tab, row, written, count, now }: Work): Promise<void> {
  const tabs = change.objectStore('tabs');
  const states = change.objectStore('states');
  const there = await tabs.get(tab);
  // rows of tabs that were long idle are cleared away; such a one is written whole
  const before = there && written && there.first === written.first ? written : null;
  const last = row.first + row.states.length - 1;
  if (!before) await states.delete(IDBKeyRange.bound([tab, 0], [tab, Number.MAX_SAFE_INTEGER]));
  else await clear(change, tab, before, row.first, last);
  for (const [index, { id, plan, label }] of row.states.entries()) {
    const at = row.first + index;
    const old = before?.states[at - before.first];
    if (old && isSameState(old, { id, plan, label })) continue;
    await states.put({ tab, at, id, plan, label });
  }
  await tabs.put({ tab, first: row.first, cursor: row.cursor, last, count, saved: now });
}

/** Takes away the states that are no longer in the row, at either end. */
async function clear(change: Change, tab: string, before: StateRow, first: number, last: number) {
  const states = change.objectStore('states');
  if (first > before.first) {
    await states.delete(IDBKeyRange.bound([tab, before.first], [tab, first - 1]));
  }
  const lastBefore = before.first + before.states.length - 1;
  if (lastBefore > last) {
    await states.delete(IDBKeyRange.bound([tab, last + 1], [tab, lastBefore]));
  }
}

function isSameState(one: State, other: State): boolean {
  return one.plan === other.plan && one.label === other.label && one.id === other.id;
}
