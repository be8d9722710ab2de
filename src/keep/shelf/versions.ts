/** Earlier states of a plan, put by with a name or without being asked for. */

import { limits } from '../../plan/limits.ts';
import type { Plan } from '../../plan/schema.ts';
import { changeWhole } from './changeWhole.ts';
import type { Card, Change, ShelfDb, VersionRecord } from './records.ts';

/** Of those without a name the oldest goes for each one more. */
const mostUnnamed = 60;

type NewVersion = Omit<VersionRecord, 'number' | 'thumbnail'>;

/** Puts a version by, with the outline that the plan's card has. */
export async function putVersion(
  change: Change,
  version: NewVersion,
  { thumbnail }: Pick<Card, 'thumbnail'>,
): Promise<void> {
  const versions = change.objectStore('versions');
  // the database gives the number
  await versions.add({ ...version, thumbnail } as VersionRecord);
  const all = await versions.index('of').getAll(version.of);
  // one that comes out of an archive may be older than those that are there
  const unnamed = all.filter(({ name }) => name === null).sort(byAge);
  for (const { number } of unnamed.slice(0, -mostUnnamed)) await versions.delete(number);
}

/** The versions of a plan, the newest first. */
export async function versionsOf(db: ShelfDb, id: string): Promise<readonly VersionRecord[]> {
  const all = await db.getAllFromIndex('versions', 'of', id);
  return all.sort(byAge).reverse();
}

function byAge(one: VersionRecord, other: VersionRecord): number {
  return one.made - other.made || one.number - other.number;
}

/** Puts by the plan as it is on the shelf, under a name or none; false if it is not there. */
export function putBy(db: ShelfDb, id: string, name: string | null): Promise<boolean> {
  return changeWhole(db, async (change) => {
    const record = await change.objectStore('plans').get(id);
    const card = await change.objectStore('cards').get(id);
    if (!record || !card) return false;
    const version = { of: id, name: shortened(name), made: Date.now(), plan: record.plan };
    await putVersion(change, version, card);
    return true;
  });
}

/** Gives a version a name, another, or none. */
export async function renameVersion(db: ShelfDb, number: number, name: string | null) {
  const change = db.transaction('versions', 'readwrite');
  const version = await change.store.get(number);
  if (version) await change.store.put({ ...version, name: shortened(name) });
  await change.done;
}

/** A plan brought back from a version keeps the name it has now. */
export function broughtBack(version: Plan, now: Plan): Plan {
  return { ...version, name: now.name };
}

function shortened(name: string | null): string | null {
  return name === null ? null : name.slice(0, limits.name.most);
}
