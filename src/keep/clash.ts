/** Two windows have changed one plan: the ways on, of which none loses anything. */
import { keepingWords } from '#words/keeping.ts';
import { demos } from '../plan/demo/demos.ts';
import { benchPages, setBenchPage } from './benchHere.ts';
import { keptHere } from './keepHere.ts';
import { newId } from './newId.ts';
import { lookAt } from './openKept.ts';
import { nameOfCopy } from './shelf/copyName.ts';
import { keepState } from './shelf/keepState.ts';
import { namesOn } from './shelf/shelfPlans.ts';
import { here } from './useStudio.ts';

/** What the other window has takes the place of what is here; undo brings that back. */
export function takeTheirs(): void {
  const { clash } = keepState.getState();
  const kept = keptHere();
  if (clash === undefined || !kept) return;
  keepState.setState({ clash: undefined });
  if (clash === null) {
    kept.keeper.knows(here.getState().history.id, undefined);
    lookAt(demos[0].plan);
    return;
  }
  kept.keeper.knows(clash.id, clash.revision, clash.plan);
  if (clash.page) setBenchPage(clash.id, clash.page);
  here.getState().open(clash.plan, clash.id, keepingWords.steps.takingTheirs);
}

/** What is here goes on as a plan of its own, and the other stays as it is. */
export async function keepMine(): Promise<void> {
  const { db, clash } = keepState.getState();
  const names = db ? await namesOn(db) : [];
  const { plan, history } = here.getState();
  // settled, or about another plan, by now
  if (clash === undefined || keepState.getState().clash !== clash) return;
  keepState.setState({ clash: undefined });
  const id = newId();
  const page = benchPages.getState()[history.id];
  if (page) setBenchPage(id, page);
  const copy = { ...plan, name: nameOfCopy(plan.name, names) };
  here.getState().open(copy, id, keepingWords.steps.keepingMine);
}
