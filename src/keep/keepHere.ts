/** The keeping of this page's plan: begun with the page, and what views ask of it. */
import { keepingWords } from '#words/keeping.ts';
import { problemText } from '../plan/problems.ts';
import type { Plan } from '../plan/schema.ts';
import { settleBuild } from '../work/caller.ts';
import { benchPages, setBenchPage } from './benchHere.ts';
import { browserStore, tabStore } from './draft.ts';
import { keepAsDraft } from './keepAsDraft.ts';
import { keepShapes } from './keepShapes.ts';
import { shapeStore } from './shapeStore.ts';
import { findWork } from './shelf/findWork.ts';
import type { Keeper } from './shelf/keeper.ts';
import { keeper } from './shelf/keeper.ts';
import type { NotKept } from './shelf/keepState.ts';
import { keepState, shelfChanged } from './shelf/keepState.ts';
import { nameOf, openShelf } from './shelf/openShelf.ts';
import { clearOldTabs } from './shelf/readWork.ts';
import type { ShelfDb } from './shelf/records.ts';
import { refusals } from './shelf/refusals.ts';
import type { TabTalk } from './shelf/tabTalk.ts';
import { tabTalk } from './shelf/tabTalk.ts';
import { here } from './useStudio.ts';

interface KeptHere {
  readonly keeper: Keeper;
  readonly talk: TabTalk;
  readonly tab: string;
}

let kept: KeptHere | null = null;
let shapes = shapeStore(null);

/** Tabs that were left are cleared away when the page has come to rest, ms. */
const restBeforeClearing = 5000;

/** Opens the shelf and restores what this tab had at hand. Never rejects: the app works without. */
export async function beginHere(): Promise<void> {
  shapes = shapeStore(import.meta.env.PROD ? settleBuild : null);
  const opening = await openShelf((why) => keepState.setState({ db: null, notKept: why }));
  if (opening.kind !== 'open') {
    withoutShelf(opening.kind);
    return;
  }
  try {
    kept = await begin(opening.db);
    keepState.setState({ db: opening.db });
  } catch (error) {
    opening.db.close();
    withoutShelf(whyNot(error));
  }
}

/** The keeper of this page's plan; null where the browser has no shelf. */
export function keptHere(): KeptHere | null {
  return kept;
}

/**
 * Says to this tab and to the others that a plan of the shelf was changed, added or deleted. `now` is the
 * plan as it is there, where it is at hand.
 */
export function tellChanged(id: string, revision: number | undefined, now?: Plan): void {
  shelfChanged();
  if (!kept) return;
  const { history, plan } = here.getState();
  kept.keeper.knows(id, revision, now);
  if (revision === undefined && history.id === id) kept.keeper.looksAt(id, plan);
  kept.talk.tell({ tab: kept.tab, id });
}

const refused = refusals();

/** Takes note that the browser would not save what `tab` has at hand, or (null) that it does again. */
export function heardRefusal(tab: string, error: unknown): void {
  // a shelf that a newer page has closed stays closed
  if (!keepState.getState().db && kept) return;
  const why = error === null ? null : whyNot(error);
  if (why === 'full') void shapes.clear();
  keepState.setState({ notKept: refused.hear(tab, why) });
}

function whyNot(error: unknown): NotKept {
  return nameOf(error) === 'QuotaExceededError' ? 'full' : 'refused';
}

async function begin(db: ShelfDb): Promise<KeptHere> {
  const { tab, work, isUnsaved, problems } = await findWork(db, browserStore(), tabStore());
  for (const [id, page] of Object.entries(work?.pages ?? {})) setBenchPage(id, page);
  const history = work?.history ?? here.getState().history;
  const shape = await shapes.find(history.plan);
  here.getState().restore(history, shape);
  keepShapes(here, shapes, shape && history.plan);
  const talk = tabTalk(({ id }) => {
    shelfChanged();
    if (id === here.getState().history.id) void own.check();
  });
  const own = keeper({
    ...{ db, tab, studio: here, journal: browserStore() },
    ...(work && { found: work }),
    pageOf: (id) => benchPages.getState()[id],
    onSaved(id) {
      shelfChanged();
      talk.tell({ tab, id });
      askToStay();
    },
    onClash: (clash) => keepState.setState({ clash }),
    onRefused: (error) => heardRefusal(tab, error),
  });
  const { id, plan } = here.getState().history;
  if (!work?.known.has(id) && !isUnsaved) own.looksAt(id, plan);
  benchPages.subscribe(() => own.changed());
  if (isUnsaved) own.changed();
  if (problems.length > 0) {
    const lines = problems.map(problemText);
    here.getState().showProblem([keepingWords.lastNotOpened, ...lines].join('\n'));
  }
  setTimeout(() => clearOldTabs(db).catch(() => {}), restBeforeClearing);
  globalThis.addEventListener('pagehide', own.leave);
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'hidden') own.leave();
  });
  return { keeper: own, talk, tab };
}

let isAskedToStay = false;

/** Asks the browser, once there is something to lose, not to clear the shelf away when it needs room. */
function askToStay(): void {
  if (isAskedToStay) return;
  isAskedToStay = true;
  globalThis.navigator?.storage?.persist?.().catch(() => {});
}

function withoutShelf(why: NotKept): void {
  keepState.setState({ db: null, notKept: why });
  keepAsDraft(here, browserStore());
}
