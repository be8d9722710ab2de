/** The bench of this page: its book, kept at every change, and whether the browser keeps it. */
import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';
import { rowCount } from '../plan/counts.ts';
import { measuresOf, withMeasures } from '../plan/measures.ts';
import type { Plan } from '../plan/schema.ts';
import type { BenchBook, BenchPage } from './benchBook.ts';
import { chosenRecord, keepBook, keptBook, pageOf, withMeasured, withPage } from './benchBook.ts';
import { browserStore } from './draft.ts';
import { presentStudio } from './useStudio.ts';

interface BenchHere {
  readonly book: BenchBook;
  /** False once the browser refused to keep the book. */
  readonly isKept: boolean;
}

const store = browserStore();
const here = createStore<BenchHere>(() => ({ book: keptBook(store), isKept: store !== null }));

/** The book as it is, and whether the browser keeps it. */
export function useBenchBook(): BenchHere {
  return useStore(here);
}

/**
 * Changes the page of the plan at hand. What the record then at hand has measured goes into the plan,
 * as far as the plan has such rows; `label` says what was done, for the plan's undo.
 */
export function changeBenchPage(change: (page: BenchPage) => BenchPage, label: string): void {
  const { plan, change: changePlan } = presentStudio();
  const page = change(pageNow(here.getState().book, plan));
  const book = withPage(here.getState().book, plan.name, page);
  here.setState({ book, isKept: keepBook(store, book) });
  const measured = withMeasures(plan, chosenRecord(page));
  if (measured !== plan) changePlan(measured, label);
}

/** The page of `plan`; what is measured in the plan is what is measured in its record at hand. */
export function pageNow(book: BenchBook, plan: Plan): BenchPage {
  return withMeasured(pageOf(book, plan.name, plan.measured), rowCount(plan), measuresOf(plan));
}
