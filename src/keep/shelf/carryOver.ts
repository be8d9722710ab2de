/** What an older Girthline kept in the browser's plain storage, brought to the shelf once. */
import { sketch } from '../../mesh/sketch.ts';
import { demos } from '../../plan/demo/demos.ts';
import type { Plan } from '../../plan/schema.ts';
import type { BenchPage } from '../benchBook.ts';
import { forgetBook, keptBook } from '../benchBook.ts';
import type { DraftStore } from '../draft.ts';
import { forgetDraft, keptDraft } from '../draft.ts';
import { newId } from '../newId.ts';
import { cardOf } from './card.ts';
import { changeWhole } from './changeWhole.ts';
import { isSame } from './isSame.ts';
import { forgetAside, plansAside } from './keptAside.ts';
import type { ShelfDb } from './records.ts';

export interface CarriedOver {
  readonly plan: Plan;
  readonly id: string;
  /** Undefined for a demo that was only looked at: it is not yet somebody's plan. */
  readonly revision: number | undefined;
  readonly page: BenchPage | undefined;
}

/**
 * Puts the draft, the plans put aside and the records of the bench on the shelf, and then forgets them
 * where they were. Gives the draft, which was the plan at hand; null where there was none. Rejects, with
 * all as it was, where the database refuses.
 */
export async function carryOver(
  db: ShelfDb,
  store: DraftStore | null,
): Promise<CarriedOver | null> {
  const draft = keptDraft(store);
  const aside = plansAside(store);
  const book = keptBook(store);
  if (!draft && aside.length === 0 && Object.keys(book).length === 0) return null;
  const now = Date.now();
  const plans = [...(draft ? [draft] : []), ...aside].map((plan): CarriedOver => {
    const page = Object.hasOwn(book, plan.name) ? book[plan.name] : undefined;
    const isLookedAt = !page && demos.some((demo) => isSame(demo.plan, plan));
    return { plan, id: newId(), revision: isLookedAt ? undefined : 1, page };
  });
  await changeWhole(db, async (change) => {
    for (const { plan, id, revision } of plans) {
      if (revision === undefined) continue;
      await change.objectStore('plans').put({ id, plan, revision, by: '' });
      await change.objectStore('cards').put({ ...cardOf(id, plan, now), thumbnail: sketch(plan) });
    }
    for (const [name, page] of Object.entries(book)) {
      const owner = plans.find(({ plan }) => plan.name === name);
      await change.objectStore('bench').put({ of: owner?.id ?? `name:${name}`, page });
    }
  });
  // what this version cannot read stays where it is, for one that can
  if (draft) forgetDraft(store);
  forgetAside(store);
  forgetBook(store);
  return draft ? (plans[0] ?? null) : null;
}
