/** What came with a plan from an archive, joined to what the shelf has of that plan. */
import { sketch } from '../../mesh/sketch.ts';
import type { BenchPage } from '../benchBook.ts';
import { changeWhole } from './changeWhole.ts';
import { isSame } from './isSame.ts';
import type { ShelfDb, VersionRecord } from './records.ts';
import { putVersion } from './versions.ts';

export interface Belongings {
  readonly versions: readonly Pick<VersionRecord, 'name' | 'made' | 'plan'>[];
  readonly page: BenchPage | undefined;
}

/**
 * Adds versions that the plan has not yet, and the page of the bench where it has none. What is there stays
 * as it is. Gives how many things were added; 0 where the plan is not on the shelf.
 */
export function takeAlong(
  db: ShelfDb,
  id: string,
  { versions, page }: Belongings,
): Promise<number> {
  return changeWhole(db, async (change) => {
    if (!(await change.objectStore('cards').getKey(id))) return 0;
    const there = await change.objectStore('versions').index('of').getAll(id);
    const isThere = (one: Belongings['versions'][number]) =>
      there.some(({ made, plan }) => made === one.made && isSame(plan, one.plan));
    for (const version of versions.filter((one) => !isThere(one))) {
      await putVersion(change, { of: id, ...version }, { thumbnail: sketch(version.plan) });
    }
    // of those without a name some may have been too many
    let added = (await change.objectStore('versions').index('of').count(id)) - there.length;
    const bench = change.objectStore('bench');
    if (page && !(await bench.get(id))) {
      await bench.put({ of: id, page });
      added += 1;
    }
    return added;
  });
}
