/** What is done with the plans of the shelf, each as one change that is made whole or not at all. */
import { sketch } from '../../mesh/sketch.ts';
import type { Thumbnail } from '../../mesh/thumbnailBox.ts';
import { checkPlan } from '../../plan/read.ts';
import type { Plan } from '../../plan/schema.ts';
import type { BenchPage } from '../benchBook.ts';
import { newId } from '../newId.ts';
import { cardOf } from './card.ts';
import { changeWhole } from './changeWhole.ts';
import { nameOfCopy } from './copyName.ts';
import type { Card, Change, PlanRecord, Removed, ShelfDb, VersionRecord } from './records.ts';
import { putVersion } from './versions.ts';

/** The cards of all plans, the latest changed first. */
export async function cardsOf(db: ShelfDb): Promise<readonly Card[]> {
  const cards = await db.getAll('cards');
  return cards.toSorted((one, other) => other.updated - one.updated);
}

/** The names that plans of the shelf have; none where it cannot be read, as a name is not worth failing for. */
export async function namesOn(db: ShelfDb): Promise<readonly string[]> {
  const cards = await db.getAll('cards').catch(() => []);
  return cards.map(({ name }) => name);
}

/** A plan that is new to the shelf, with what came with it. */
export interface NewPlan {
  readonly plan: Plan;
  readonly versions: readonly Pick<VersionRecord, 'name' | 'made' | 'plan'>[];
  readonly page: BenchPage | undefined;
}

/** Puts new plans on the shelf, all of them or none. Gives their ids. */
export function addPlans(db: ShelfDb, plans: readonly NewPlan[]): Promise<readonly string[]> {
  return changeWhole(db, async (change) => {
    const now = Date.now();
    const ids: string[] = [];
    for (const { plan, versions, page } of plans) {
      const id = await add(change, plan, now, null);
      if (page) await change.objectStore('bench').put({ of: id, page });
      for (const version of versions) {
        const picture = { thumbnail: sketch(version.plan) };
        await putVersion(change, { ...version, of: id }, picture);
      }
      ids.push(id);
    }
    return ids;
  });
}

/** A copy of a plan under a name of its own; undefined where it is no longer on the shelf. */
export function copyPlan(db: ShelfDb, id: string): Promise<string | undefined> {
  return changeWhole(db, async (change) => {
    const record = await change.objectStore('plans').get(id);
    const cards = await change.objectStore('cards').getAll();
    if (!record) return undefined;
    const taken = cards.map(({ name }) => name);
    const plan = { ...record.plan, name: nameOfCopy(record.plan.name, taken) };
    const thumbnail = cards.find((card) => card.id === id)?.thumbnail ?? null;
    return add(change, plan, Date.now(), thumbnail);
  });
}

/** Gives a plan of the shelf another name. Gives its new revision; undefined where it is not there. */
export function renamePlan(db: ShelfDb, id: string, name: string): Promise<number | undefined> {
  return changeWhole(db, async (change) => {
    const record = await change.objectStore('plans').get(id);
    return record && write(change, record, { ...record.plan, name });
  });
}

/**
 * Puts `plan` in the place of one of the shelf, which becomes a version of it. Gives the new revision;
 * undefined where there is none to replace.
 */
export function replacePlan(db: ShelfDb, id: string, plan: Plan): Promise<number | undefined> {
  return changeWhole(db, async (change) => {
    const record = await change.objectStore('plans').get(id);
    const card = await change.objectStore('cards').get(id);
    if (!record || !card) return undefined;
    const version = { of: id, name: null, made: card.updated, plan: record.plan };
    await putVersion(change, version, card);
    return write(change, record, plan, sketch(plan));
  });
}

/** Takes a plan off the shelf with all that belongs to it; undefined where it is not there. */
export function removePlan(db: ShelfDb, id: string): Promise<Removed | undefined> {
  return changeWhole(db, async (change) => {
    const record = await change.objectStore('plans').get(id);
    const card = await change.objectStore('cards').get(id);
    if (!record || !card) return undefined;
    const versions = await change.objectStore('versions').index('of').getAll(id);
    const bench = await change.objectStore('bench').get(id);
    await change.objectStore('plans').delete(id);
    await change.objectStore('cards').delete(id);
    await change.objectStore('bench').delete(id);
    for (const { number } of versions) await change.objectStore('versions').delete(number);
    return { record, card, versions, bench };
  });
}

/** Puts a plan back that was taken off. */
export function putBack(db: ShelfDb, removed: Removed): Promise<void> {
  const { record, card, versions, bench } = removed;
  return changeWhole(db, async (change) => {
    await change.objectStore('plans').put(record);
    await change.objectStore('cards').put(card);
    for (const version of versions) await change.objectStore('versions').put(version);
    if (bench) await change.objectStore('bench').put(bench);
  });
}

async function add(change: Change, plan: Plan, now: number, thumbnail: Thumbnail | null) {
  const id = newId();
  await change.objectStore('plans').put({ id, plan, revision: 1, by: '' });
  await change
    .objectStore('cards')
    .put({ ...cardOf(id, plan, now), thumbnail: thumbnail ?? sketch(plan) });
  return id;
}

/** Writes another plan over a record. Its picture stays unless told; it is drawn when it has settled. */
async function write(
  change: Change,
  { id, revision }: PlanRecord,
  plan: Plan,
  picture?: Thumbnail,
): Promise<number> {
  const cards = change.objectStore('cards');
  const card = await cards.get(id);
  const now = Date.now();
  const next = revision + 1;
  await change.objectStore('plans').put({ id, plan, revision: next, by: '' });
  await cards.put({
    ...cardOf(id, plan, now),
    made: card?.made ?? now,
    versioned: card?.versioned ?? 0,
    thumbnail: picture ?? card?.thumbnail ?? sketch(plan),
    revision: next,
  });
  return next;
}

/** A plan with all that belongs to it. */
export interface WholePlan {
  readonly plan: Plan;
  readonly versions: readonly VersionRecord[];
  readonly bench: BenchPage | undefined;
}

/** Everything on the shelf, plan by plan, the latest changed first. What this version cannot read is left out. */
export async function wholeShelf(db: ShelfDb): Promise<readonly WholePlan[]> {
  const whole: WholePlan[] = [];
  for (const { id } of await cardsOf(db)) {
    const record = await db.get('plans', id);
    const reading = checkPlan(record?.plan, '');
    if (!reading.ok) continue;
    const versions = await db.getAllFromIndex('versions', 'of', id);
    const readable = versions.flatMap((version) => {
      const read = checkPlan(version.plan, '');
      return read.ok ? [{ ...version, plan: read.plan }] : [];
    });
    const bench = (await db.get('bench', id))?.page;
    whole.push({ plan: reading.plan, versions: readable, bench });
  }
  return whole;
}
