/** Plans that come in from files, archives and links: put on the shelf, and duplicates asked about. */
import { takeWords } from '#words/take.ts';
import { readPage } from '../../keep/benchBook.ts';
import { benchPages, setBenchPage } from '../../keep/benchHere.ts';
import { keptHere, tellChanged } from '../../keep/keepHere.ts';
import { openKept, openNew } from '../../keep/openKept.ts';
import { isSame } from '../../keep/shelf/isSame.ts';
import { keepState, shelfChanged } from '../../keep/shelf/keepState.ts';
import { pageOfPlan } from '../../keep/shelf/readWork.ts';
import type { Card, ShelfDb } from '../../keep/shelf/records.ts';
import type { NewPlan } from '../../keep/shelf/shelfPlans.ts';
import { addPlans, cardsOf, replacePlan } from '../../keep/shelf/shelfPlans.ts';
import type { Belongings } from '../../keep/shelf/takeAlong.ts';
import { takeAlong } from '../../keep/shelf/takeAlong.ts';
import { presentStudio } from '../../keep/useStudio.ts';
import type { Plan } from '../../plan/schema.ts';
import { ask } from '../ask/asking.ts';
import { dateTimeText } from '../dates.ts';

const words = takeWords.twin;

/** A plan that comes in, with what an archive holds of it besides. */
export interface Incoming {
  readonly plan: Plan;
  readonly versions?: NewPlan['versions'];
  /** Its page of the bench, as it was read. */
  readonly bench?: unknown;
}

export interface TakenIn {
  readonly added: number;
  readonly replaced: number;
  readonly skipped: number;
  /** Were on the shelf already, as they are. */
  readonly same: number;
  /** Versions and pages of the bench that were added to plans of the shelf. */
  readonly joined: number;
}

/** Takes one plan in and opens it; one that is on the shelf already is opened there. */
export async function takeInOne(plan: Plan): Promise<void> {
  const { db } = keepState.getState();
  if (!db) {
    presentStudio().open(plan);
    return;
  }
  await keptHere()?.keeper.flush();
  const twins = twinsOf(plan, await cardsOf(db));
  const same = await sameOnShelf(db, twins, plan);
  if (same) return openTwin(same.id);
  const [twin] = twins;
  if (!twin) return openNew(plan);
  const { value } = await askAbout(plan, twin);
  if (value === 'both') return openNew(plan);
  if (value === 'replace') {
    await replace(db, twin.id, plan);
    return openTwin(twin.id);
  }
}

/** Takes many plans in and opens none. */
export async function takeInAll(db: ShelfDb, incoming: readonly Incoming[]): Promise<TakenIn> {
  await keptHere()?.keeper.flush();
  const cards = await cardsOf(db);
  const byName = new Map<string, Card[]>();
  for (const card of cards) {
    const key = nameKey(card.name);
    byName.set(key, [...(byName.get(key) ?? []), card]);
  }
  const taken = { added: 0, replaced: 0, skipped: 0, same: 0, joined: 0 };
  const fresh: NewPlan[] = [];
  let forAll: string | null = null;
  for (const [at, one] of incoming.entries()) {
    const twins = byName.get(nameKey(one.plan.name)) ?? [];
    const [twin] = twins;
    const belongings = { versions: one.versions ?? [], page: readPage(one.bench) };
    const same = await sameOnShelf(db, twins, one.plan);
    if (same) {
      taken.joined += await join(db, same.id, belongings);
      taken.same += 1;
      continue;
    }
    const rest = incoming.length - at - 1;
    const value: string = twin ? (forAll ?? (await answer(one.plan, twin, rest))) : 'both';
    if (value === 'both') {
      fresh.push({ plan: one.plan, ...belongings });
      taken.added += 1;
    } else if (value === 'replace' && twin) {
      await replace(db, twin.id, one.plan);
      taken.joined += await join(db, twin.id, belongings);
      taken.replaced += 1;
    } else taken.skipped += 1;
  }
  for (const id of await addPlans(db, fresh)) tellChanged(id, 1);
  return taken;

  async function answer(plan: Plan, twin: Card, rest: number): Promise<string> {
    const { value, isForAll } = await askAbout(plan, twin, rest);
    if (isForAll) forAll = value;
    return value;
  }
}

function askAbout(plan: Plan, twin: Card, rest = 0) {
  return ask({
    title: words.title(plan.name),
    text: words.text(dateTimeText(twin.updated)),
    choices: [
      { value: 'both', label: words.both },
      { value: 'replace', label: words.replace },
      { value: 'skip', label: words.skip },
    ],
    ...(rest > 0 && { forAll: words.forAll(rest) }),
  });
}

async function replace(db: ShelfDb, id: string, plan: Plan): Promise<void> {
  const revision = await replacePlan(db, id, plan);
  if (revision === undefined) return;
  tellChanged(id, revision, plan);
  const { history, open } = presentStudio();
  if (history.id === id) open(plan, id, words.replacing);
}

/** Adds to a plan of the shelf what came with it and is not there yet. Gives how many things that was. */
async function join(db: ShelfDb, id: string, belongings: Belongings): Promise<number> {
  const joined = await takeAlong(db, id, belongings);
  const page = await pageOfPlan(db, id, undefined);
  // of a plan that this tab has had at hand, the page would be begun anew over the one that came
  if (joined > 0 && page && !benchPages.getState()[id]) setBenchPage(id, page);
  if (joined > 0) shelfChanged();
  return joined;
}

async function openTwin(id: string): Promise<void> {
  const problem = await openKept(id);
  if (problem) presentStudio().showProblem(problem);
}

/** The plans of the same name, the latest changed first. */
function twinsOf(plan: Plan, cards: readonly Card[]): readonly Card[] {
  return cards.filter(({ name }) => nameKey(name) === nameKey(plan.name));
}

/** The one of `twins` that is the very same plan, if there is one. */
async function sameOnShelf(
  db: ShelfDb,
  twins: readonly Card[],
  plan: Plan,
): Promise<Card | undefined> {
  for (const twin of twins) {
    if (isSame((await db.get('plans', twin.id))?.plan, plan)) return twin;
  }
  return undefined;
}

function nameKey(name: string): string {
  return name.trim().toLocaleLowerCase();
}
