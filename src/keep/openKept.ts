/** Plans put in place of the one at hand: one of the shelf, a new one, or one to look at. */
import { keepingWords } from '#words/keeping.ts';
import { demos } from '../plan/demo/demos.ts';
import { problemText } from '../plan/problems.ts';
import type { PlanReading } from '../plan/read.ts';
import { checkPlan } from '../plan/read.ts';
import type { Plan } from '../plan/schema.ts';
import { setBenchPage } from './benchHere.ts';
import { browserStore, forgetDraft } from './draft.ts';
import { keptHere } from './keepHere.ts';
import { newId } from './newId.ts';
import { keepState } from './shelf/keepState.ts';
import { pageOfPlan } from './shelf/readWork.ts';
import { here } from './useStudio.ts';

/** Opens a plan of the shelf. Gives what is wrong with it, or null. */
export async function openKept(id: string): Promise<string | null> {
  const { db } = keepState.getState();
  const kept = keptHere();
  if (!db || !kept) return keepingWords.noShelf;
  if (id === here.getState().history.id) return null;
  await kept.keeper.flush();
  const record = await db.get('plans', id);
  if (!record) return keepingWords.notOnShelf;
  const reading = checkPlan(record.plan, keepingWords.thisPlan);
  if (!reading.ok) return refusalOf(reading);
  const page = await pageOfPlan(db, id, reading.plan.name);
  kept.keeper.knows(id, record.revision, reading.plan);
  if (page) setBenchPage(id, page);
  here.getState().open(reading.plan, id);
  return null;
}

/** Opens a plan that is somebody's own: it goes on the shelf. */
export async function openNew(plan: Plan): Promise<void> {
  here.getState().open(plan, newId());
  await keptHere()?.keeper.flush();
}

/** Opens a plan to look at: it goes on the shelf once it is changed. */
export function lookAt(plan: Plan): void {
  const id = newId();
  keptHere()?.keeper.looksAt(id, plan);
  here.getState().open(plan, id);
}

/** Opens the page anew with the first demo, in case the plan at hand is what stops it. */
export async function startAgain(): Promise<void> {
  lookAt(demos[0].plan);
  forgetDraft(browserStore());
  await keptHere()?.keeper.flush();
  globalThis.location.reload();
}

/** Why a plan is not opened, a line for each reason. */
export function refusalOf(reading: PlanReading): string {
  return reading.ok ? '' : reading.problems.map(problemText).join('\n');
}
