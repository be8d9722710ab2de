/** What came with a plan from an archive, joined to what the shelf has of that plan. */
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
    const card = await change.objectStore('cards').get(id);
    if (!card) return 0;
    const there = await change.objectStore('versions').index('of').getAll(id);
    const isThere = (one: Belongings['versions'][number]) =>
      there.some(({ made, plan }) => made === one.made && isSame(plan, one.plan));
    let added = 0;
    for (const version of versions.filter((one) => !isThere(one))) {
      await putVersion(change, { of: id, ...version }, card);
      added += 1;
    }
    const bench = change.objectStore('bench');
    if (page && !(await bench.get(id))) {
      await bench.put({ of: id, page });
      added += 1;
    }
    return added;
  });
}
