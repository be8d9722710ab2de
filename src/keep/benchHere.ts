/** The bench of this page: its book, and whether the browser keeps it. */
import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';
import { rowCount } from '../plan/counts.ts';
import { measuresOf, withMeasures } from '../plan/measures.ts';
import type { Plan } from '../plan/schema.ts';
import type { BenchBook, BenchPage } from './benchBook.ts';
import { chosenRecord, pageOf, withMeasured } from './benchBook.ts';
import { useKeepState } from './shelf/keepState.ts';
import { presentStudio } from './useStudio.ts';

/** The pages of the plans that this tab has had at hand; `keepHere` keeps them with their plans. */
export const benchPages = createStore<BenchBook>(() => ({}));

interface BenchHere {
  readonly book: BenchBook;
  /** False while the browser does not keep the book. */
  readonly isKept: boolean;
}

/** The book as it is, and whether the browser keeps it. */
export function useBenchBook(): BenchHere {
  const isKept = useKeepState(({ notKept }) => notKept === null);
  return { book: useStore(benchPages), isKept };
}

/** Puts the page of a plan in the book, as it was kept. */
export function setBenchPage(id: string, page: BenchPage): void {
  benchPages.setState({ [id]: page });
}

/**
 * Changes the page of the plan at hand. What the record then at hand has measured goes into the plan,
 * as far as the plan has such rows; `label` says what was done, for the plan's undo.
 */
export function changeBenchPage(change: (page: BenchPage) => BenchPage, label: string): void {
  const { plan, history, change: changePlan } = presentStudio();
  const page = change(pageNow(benchPages.getState(), plan, history.id));
  setBenchPage(history.id, page);
  const measured = withMeasures(plan, chosenRecord(page));
  if (measured !== plan) changePlan(measured, label);
}

/** The page of a plan; what is measured in the plan is what is measured in its record at hand. */
export function pageNow(book: BenchBook, plan: Plan, id: string): BenchPage {
  return withMeasured(pageOf(book, id, plan.measured), rowCount(plan), measuresOf(plan));
}
