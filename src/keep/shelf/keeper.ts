/**
 * Keeps what a studio has at hand: every change goes at once to the journal, and a moment later, with all
 * that belongs to it, to the database.
 */
import type { StoreApi } from 'zustand/vanilla';
import { keepingWords } from '#words/keeping.ts';
import { thumbnail } from '../../mesh/thumbnail.ts';
import type { Thumbnail } from '../../mesh/thumbnailBox.ts';
import type { Basket } from '../../model/basket.ts';
import type { Plan } from '../../plan/schema.ts';
import type { BenchPage } from '../benchBook.ts';
import { sameShape } from '../sameShape.ts';
import type { Studio } from '../studio.ts';
import { isRested } from '../studio.ts';
import type { JournalStore } from './journal.ts';
import { clearJournal, longestTail, writeJournal } from './journal.ts';
import { knownPlans } from './knownPlans.ts';
import type { ShelfDb } from './records.ts';
import type { TheirPlan, Work } from './saveWork.ts';
import { saveWork } from './saveWork.ts';
import type { StateRow } from './states.ts';
import { stateRow, tailOf } from './states.ts';

export interface KeeperOptions {
  readonly db: ShelfDb;
  readonly tab: string;
  readonly studio: StoreApi<Studio>;
  /** Where the latest change is written at once; null for none. */
  readonly journal: JournalStore | null;
  /** The page of the bench of a plan, if it has one. */
  readonly pageOf: (id: string) => BenchPage | undefined;
  /** What was found when the page was opened. */
  readonly found?: {
    readonly written: StateRow | null;
    readonly count: number;
    readonly known: ReadonlyMap<string, number>;
    /** The plans that have these revisions. */
    readonly plans?: ReadonlyMap<string, Plan>;
  };
  readonly onSaved: (id: string) => void;
  /** Another tab has changed the plan at hand, or deleted it (null); undefined when that is settled. */
  readonly onClash: (theirs: TheirPlan | null | undefined) => void;
  /** The browser would not save; null once it does again. */
  readonly onRefused: (error: unknown) => void;
}

export interface Keeper {
  /** Something of the plan at hand has changed beside the studio, as its page of the bench. */
  changed(): void;
  /**
   * `id` is on the shelf as `revision`, which is `plan`; undefined if it is there no longer. Where the plan
   * is not told, undoing back to it asks if the shelf has it otherwise.
   */
  knows(id: string, revision: number | undefined, plan?: Plan): void;
  /** `plan` is only looked at: it goes on the shelf once it is changed. */
  looksAt(id: string, plan: Plan): void;
  /** Saves what is not yet saved. */
  flush(): Promise<void>;
  /** Sees whether the plan at hand is on the shelf as this tab knows it. */
  check(): Promise<void>;
  /** For a page that is going: writes to the journal at once what is not yet saved, and saves it. */
  leave(): void;
  stop(): void;
}

/** Changes are saved once they rest for this long, ms, */
const rest = 250;
/** and while they go on, as in a drag, so often, ms. */
const longestWait = 800;
/** The journal is written no more often than this, ms. */
const journalRest = 150;
/** After a refusal it is tried again, ms. */
const restAfterRefusal = 5000;

/** A keeper of `studio`; it begins at once. */
export function keeper(options: KeeperOptions): Keeper {
  const { db, tab, studio, journal, pageOf, found } = options;
  const known = knownPlans(found?.known, found?.plans);
  const lookedAt = new Map<string, { readonly plan: Plan; readonly page: BenchPage | undefined }>();
  let count = found?.count ?? 0;
  let written = found?.written ?? null;
  let savedCount = count;
  let journalled = Number.NEGATIVE_INFINITY;
  let journalTimer: ReturnType<typeof setTimeout> | undefined;
  let saveTimer: ReturnType<typeof setTimeout> | undefined;
  let waitingSince: number | undefined;
  let saving: Promise<void> | null = null;
  let isStale = false;
  const drawn = pictureOf();
  /** Plans that others took the place of, before they were saved. */
  const left = new Map<string, Plan>();

  const present = () => {
    const { plan, history } = studio.getState();
    return { id: history.id, plan, history, page: pageOf(history.id) };
  };
  const pictureNow = () => {
    const now = studio.getState();
    const { plan, basket } = now;
    return basket && isRested(now) && sameShape(basket.plan, plan) ? drawn(basket) : null;
  };
  const jot = () => {
    if (!journal) return;
    clearTimeout(journalTimer);
    journalTimer = undefined;
    journalled = performance.now();
    const { id, plan, history, page } = present();
    const label = history.past.at(-1)?.label ?? keepingWords.steps.change;
    const whole = tailOf(stateRow(history), written);
    const tail = whole.states.length > longestTail ? null : whole;
    const base = { known: known.revisionOf(id) ?? null, page: page ?? null };
    writeJournal(journal, tab, { id, plan, label, ...base, count, time: Date.now(), tail });
  };
  const workOf = (id: string, plan: Plan, counted: number): Work => {
    const page = pageOf(id);
    const seen = lookedAt.get(id);
    const isWorkedOn = seen?.plan !== plan || seen.page !== page;
    return {
      ...{ tab, id, plan, row: stateRow(studio.getState().history), written, page, isWorkedOn },
      ...{ known: known.revisionOf(id), thumbnail: null, now: Date.now(), count: counted },
    };
  };
  const tookNote = (id: string, revision: number | undefined) => {
    const isNews = revision !== known.revisionOf(id);
    if (revision !== undefined) known.set(id, revision);
    return isNews;
  };
  const saveLeft = async () => {
    for (const [id, plan] of [...left]) {
      const work = workOf(id, plan, savedCount);
      const result = await saveWork(db, work);
      written = work.row;
      left.delete(id);
      // a clash is not asked about for a plan that is no longer at hand: it can be undone to, and is then
      if (result.kind === 'clash' || result.revision === undefined) continue;
      if (tookNote(id, result.revision)) options.onSaved(id);
    }
  };
  const once = async () => {
    await saveLeft();
    const counted = count;
    const { id, plan } = present();
    const work = workOf(id, plan, counted);
    const result = await saveWork(
      db,
      work.isWorkedOn ? { ...work, thumbnail: pictureNow() } : work,
    );
    written = work.row;
    options.onRefused(null);
    savedCount = counted;
    if (counted === count) {
      clearTimeout(journalTimer);
      journalTimer = undefined;
      clearJournal(journal, tab);
    }
    if (result.kind === 'clash') {
      if (studio.getState().history.id === id) options.onClash(result.theirs);
      return;
    }
    const isNews = tookNote(id, result.revision);
    options.onClash(undefined);
    if (isNews) options.onSaved(id);
  };
  const save = (): Promise<void> => {
    clearTimeout(saveTimer);
    saveTimer = undefined;
    waitingSince = undefined;
    if (saving) {
      isStale = true;
      return saving;
    }
    saving = (async () => {
      do {
        isStale = false;
        try {
          await once();
        } catch (error) {
          options.onRefused(error);
          saveTimer ??= setTimeout(save, restAfterRefusal);
        }
      } while (isStale);
      saving = null;
    })();
    return saving;
  };
  const schedule = () => {
    const now = performance.now();
    waitingSince ??= now;
    clearTimeout(saveTimer);
    saveTimer = setTimeout(save, Math.min(rest, Math.max(0, waitingSince + longestWait - now)));
  };
  const changed = () => {
    count += 1;
    const wait = journalled + journalRest - performance.now();
    if (wait <= 0) jot();
    else journalTimer ??= setTimeout(jot, wait);
    schedule();
  };
  const flush = async () => {
    if (saveTimer !== undefined || saving) await save();
  };
  const stop = studio.subscribe((now, before) => {
    if (now.history.id !== before.history.id) {
      if (count !== savedCount) left.set(before.history.id, before.history.plan);
      known.came(before.history, now.history);
    }
    if (now.history !== before.history) changed();
    else if (now.settling !== before.settling && now.settling?.polished) schedule();
  });

  return {
    changed,
    flush,
    check: save,
    leave() {
      if (count !== savedCount) jot();
      void flush();
    },
    knows(id, revision, plan) {
      lookedAt.delete(id);
      left.delete(id);
      known.forget(id);
      if (revision !== undefined) known.set(id, revision, plan);
    },
    looksAt(id, plan) {
      known.forget(id);
      lookedAt.set(id, { plan, page: pageOf(id) });
    },
    stop() {
      stop();
      clearTimeout(saveTimer);
      clearTimeout(journalTimer);
    },
  };
}

/** Draws a basket's picture, once for each basket. */
function pictureOf(): (basket: Basket) => Thumbnail {
  let last: { readonly positions: Float64Array; readonly picture: Thumbnail } | null = null;
  return (basket) => {
    if (last?.positions !== basket.positions) {
      last = { positions: basket.positions, picture: thumbnail(basket) };
    }
    return last.picture;
  };
}
