/** What was done, step by step, so that it can be undone: plain data and three functions. */
import { keepingWords } from '#words/keeping.ts';
import type { Plan } from '../plan/schema.ts';
import { newId } from './newId.ts';

export interface Step {
  /** The plan on the other side of this step. */
  readonly plan: Plan;
  /** Which plan of the shelf that is: opening another one is a step too. */
  readonly id: string;
  /** What the step did, as `girth of row 18`. */
  readonly label: string;
}

export interface History {
  readonly plan: Plan;
  /** Which plan of the shelf it is. */
  readonly id: string;
  /** How many steps before `past` were let go. */
  readonly first: number;
  /** Steps that can be undone, oldest first; each holds the plan before it. */
  readonly past: readonly Step[];
  /** Steps that can be redone, nearest last; each holds the plan after it. */
  readonly future: readonly Step[];
  /** The step that the next change may still join, and when it last grew, ms. */
  readonly growing: { readonly key: string; readonly time: number } | null;
}

/** A change with the same key joins the step before it unless this much time has passed, ms. */
const longestRest = 1500;

/** Keys that begin so are of one hold of the pointer, which is one step however long it rests. */
const hold = 'hold-';

/** So many steps can be undone; then the oldest goes for each new one. */
const mostSteps = 1000;

/** A history without steps. `id` is a new plan's unless told. */
export function newHistory(plan: Plan, id: string = newId()): History {
  return { plan, id, first: 0, past: [], future: [], growing: null };
}

/**
 * The history after a change to `plan`. Changes with the same `key` one after another, as those of
 * one drag, are one step. `time` is when the change was made, ms.
 */
export function changed(
  history: History,
  plan: Plan,
  label: string,
  key: string | undefined,
  time: number,
): History {
  const { growing } = history;
  const isSame = key !== undefined && growing?.key === key;
  const joins = isSame && (key.startsWith(hold) || time - growing.time < longestRest);
  const next = joins ? history : stepped(history, label);
  return { ...next, plan, future: [], growing: key === undefined ? null : { key, time } };
}

/** The history after another plan of the shelf has taken this one's place. */
export function opened(history: History, plan: Plan, id: string, label: string): History {
  return { ...stepped(history, label), plan, id, future: [], growing: null };
}

/** The history one step back; itself where there is nothing to undo. */
export function undone(history: History): History {
  const step = history.past.at(-1);
  if (!step) return history;
  return {
    ...history,
    plan: step.plan,
    id: step.id,
    past: history.past.slice(0, -1),
    future: [...history.future, { ...present(history), label: step.label }],
    growing: null,
  };
}

/** The history one step forward; itself where there is nothing to redo. */
export function redone(history: History): History {
  const step = history.future.at(-1);
  if (!step) return history;
  return {
    ...history,
    plan: step.plan,
    id: step.id,
    past: [...history.past, { ...present(history), label: step.label }],
    future: history.future.slice(0, -1),
    growing: null,
  };
}

/** What undo would undo, and which plan comes back where that is another one. */
export function undoLabel({ past, id }: History): string | undefined {
  const step = past.at(-1);
  if (!step || step.id === id) return step?.label;
  return keepingWords.steps.backTo(step.label, step.plan.name);
}

/** What redo would do again. */
export function redoLabel({ future }: History): string | undefined {
  return future.at(-1)?.label;
}

function present({ plan, id }: History): Omit<Step, 'label'> {
  return { plan, id };
}

/** The present plan put among the steps that can be undone. */
function stepped(history: History, label: string): History {
  const past = [...history.past, { ...present(history), label }];
  const over = Math.max(0, past.length - mostSteps);
  return { ...history, first: history.first + over, past: past.slice(over) };
}
