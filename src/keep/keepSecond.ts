/** The second plan of the comparison is kept on the shelf too, once it is changed. */
import type { StoreApi } from 'zustand/vanilla';
import { keepingWords } from '#words/keeping.ts';
import { checkPlan } from '../plan/read.ts';
import type { Plan } from '../plan/schema.ts';
import { heardRefusal, keptHere } from './keepHere.ts';
import { newId } from './newId.ts';
import { refusalOf } from './openKept.ts';
import { nameOfCopy } from './shelf/copyName.ts';
import type { Keeper } from './shelf/keeper.ts';
import { keeper } from './shelf/keeper.ts';
import { keepState, shelfChanged } from './shelf/keepState.ts';
import { secondOf } from './shelf/readWork.ts';
import { namesOn } from './shelf/shelfPlans.ts';
import type { Studio } from './studio.ts';
import { here } from './useStudio.ts';

let second: { readonly studio: StoreApi<Studio>; readonly keeper: Keeper } | null = null;

/** Keeps the plan of `studio`. Where another window changes it too, it goes on as a copy. */
export function keepSecond(studio: StoreApi<Studio>): void {
  const { db } = keepState.getState();
  const kept = keptHere();
  if (!db || !kept) return;
  const { talk, tab: first, keeper: ofFirst } = kept;
  const tab = secondOf(first);
  const own = keeper({
    ...{ db, tab, studio, journal: null, pageOf: () => undefined },
    onSaved(id) {
      shelfChanged();
      talk.tell({ tab, id });
      if (id === here.getState().history.id) void ofFirst.check();
    },
    async onClash(theirs) {
      if (theirs === undefined) return;
      const clashing = studio.getState().history.id;
      const names = await namesOn(db);
      const { plan, history, open, showProblem } = studio.getState();
      // another one may have been opened meanwhile
      if (history.id !== clashing) return;
      open({ ...plan, name: nameOfCopy(plan.name, names) }, newId(), keepingWords.steps.keepingIt);
      showProblem(keepingWords.goesOnAsCopy);
    },
    onRefused: (error) => heardRefusal(tab, error),
  });
  const { plan, history } = studio.getState();
  own.looksAt(history.id, plan);
  second = { studio, keeper: own };
  globalThis.addEventListener('pagehide', own.leave);
}

/** Opens a plan of the shelf as the second one. Gives what is wrong with it, or null. */
export async function openKeptAsSecond(id: string): Promise<string | null> {
  const record = await keepState.getState().db?.get('plans', id);
  if (!record || !second) return keepingWords.notOnShelf;
  const reading = checkPlan(record.plan, keepingWords.thisPlan);
  if (!reading.ok) return refusalOf(reading);
  second.keeper.knows(id, record.revision, reading.plan);
  second.studio.getState().open(reading.plan, id);
  return null;
}

/** Opens a plan to look at as the second one: it goes on the shelf once it is changed. */
export function lookAtAsSecond(studio: StoreApi<Studio>, plan: Plan): void {
  const id = newId();
  second?.keeper.looksAt(id, plan);
  studio.getState().open(plan, id);
}
