/** The app's state: one plan with its history, and the basket that was last settled from it. */
import type { StoreApi } from 'zustand/vanilla';
import { createStore } from 'zustand/vanilla';
import { keepingWords } from '#words/keeping.ts';
import type { Problem } from '../plan/problems.ts';
import { problemText } from '../plan/problems.ts';
import { checkPlan, readPlan } from '../plan/read.ts';
import type { Plan } from '../plan/schema.ts';
import type { SettleResult, Settler } from '../work/caller.ts';
import type { Settled } from '../work/question.ts';
import type { History } from './history.ts';
import { changed, newHistory, opened, redone, undone } from './history.ts';
import { newId } from './newId.ts';
import { sameShape } from './sameShape.ts';
import type { KeptShape } from './shapeStore.ts';

export type StageView = 'quarter' | 'side' | 'end' | 'top' | 'underside';
export type Theme = 'light' | 'dark';

export interface SettlingNote {
  /** When the plan was handed over, ms since the page's time origin. */
  readonly asked: number;
  /** Time in the worker, ms. */
  readonly milliseconds: number;
  /** True when the numbers are those of the headless command. */
  readonly polished: boolean;
}

export interface Studio {
  readonly plan: Plan;
  readonly history: History;
  readonly basket: Settled['basket'] | null;
  readonly mesh: Settled['mesh'] | null;
  readonly state: 'settling' | 'settled' | 'failed';
  /** How the basket on the stage came about; null before the first. */
  readonly settling: SettlingNote | null;
  /** Plain message with a line for each thing that is wrong; null where all is well. */
  readonly problem: string | null;
  /** What the problem is with: the last edit, the settling, or a file. */
  readonly problemWith: 'edit' | 'settling' | 'file' | null;
  /** The row pointed at, 1 … rows. */
  readonly row: number | null;
  readonly view: StageView;
  /** Counts the times a view was asked for, the same one again included. */
  readonly looks: number;
  readonly theme: Theme;
  /** Changes the plan, as one step to undo; changes with the same `merge` key join. */
  change(plan: Plan, label: string, merge?: string): void;
  undo(): void;
  redo(): void;
  /** Puts another plan in place of this one; that too can be undone. `id`: which one of the shelf. */
  open(plan: Plan, id?: string, label?: string): void;
  /** Opens the text of a file, or says what is wrong with it and leaves the plan untouched. */
  openText(text: string, file: string, take?: (plan: Plan) => void): void;
  /** Goes on where an earlier visit to the page left off, with the shape of its plan if that was kept. */
  restore(history: History, shape?: KeptShape | null): void;
  pointAt(row: number | null): void;
  look(view: StageView): void;
  wear(theme: Theme): void;
  showProblem(problem: string | null): void;
}

/** The picture of a shape that was kept has the processor to itself for so long, ms. */
const restBeforeSettling = 1200;

/**
 * A studio that starts with `plan` and has it settled by what `startSettler` starts. One that `waits`
 * settles nothing before a history is restored.
 */
export function studio(
  plan: Plan,
  startSettler: (onResult: (result: SettleResult) => void) => Settler,
  { waits = false } = {},
): StoreApi<Studio> {
  return createStore<Studio>((set, get) => {
    const settler = startSettler((result) => set(heard(get(), result)));
    let later: ReturnType<typeof setTimeout> | undefined;
    const settle = (plan: Plan, polish: boolean) => {
      clearTimeout(later);
      settler.settle(plan, { polish });
    };

    /** Takes over a history, and has its plan settled where the shape has changed. */
    const take = (history: History, polish = false) => {
      const { plan: before, basket } = get();
      const { plan } = history;
      if (history === get().history) return;
      if (sameShape(before, plan) && get().state !== 'failed') {
        set({ history, plan, basket: basket && { ...basket, plan } });
        return;
      }
      set({ history, plan, state: 'settling', row: rowWithin(get().row, plan) });
      performance.mark('edit');
      settle(plan, polish);
    };
    const clear = () => {
      if (get().problemWith !== 'settling') set({ problem: null, problemWith: null });
    };

    if (!waits) settle(plan, true);
    return {
      plan,
      history: newHistory(plan),
      basket: null,
      mesh: null,
      state: 'settling',
      settling: null,
      problem: null,
      problemWith: null,
      row: null,
      view: 'quarter',
      looks: 0,
      theme: 'light',
      change(next, label, merge) {
        const reading = checkPlan(next, keepingWords.thisPlan);
        if (!reading.ok) {
          set(refused(keepingWords.notChanged, reading.problems, 'edit'));
          return;
        }
        clear();
        take(changed(get().history, next, label, merge, performance.now()));
      },
      undo: () => take(undone(get().history)),
      redo: () => take(redone(get().history)),
      open(next, id = newId(), label = keepingWords.steps.opening(next.name)) {
        clear();
        take(opened(get().history, next, id, label), true);
        set({ looks: get().looks + 1 });
      },
      restore(history, shape) {
        const { plan } = history;
        clearTimeout(later);
        set({ history, plan, state: 'settling', row: null });
        if (!shape) {
          settle(plan, true);
          return;
        }
        const basket = { ...shape.basket, plan };
        const asked = performance.now();
        set(
          heard(get(), {
            kind: 'settled',
            number: 0,
            ...shape,
            basket,
            plan,
            asked,
            polished: true,
          }),
        );
        // the worker, which edits go to, has not seen it
        later = setTimeout(() => settle(get().plan, true), restBeforeSettling);
      },
      openText(text, file, take = (plan) => get().open(plan)) {
        const reading = readPlan(text, file);
        if (reading.ok) take(reading.plan);
        else set(refused(keepingWords.fileNotOpened, reading.problems, 'file'));
      },
      pointAt: (row) => set({ row }),
      look: (view) => set({ view, looks: get().looks + 1 }),
      wear: (theme) => set({ theme }),
      showProblem: (problem) => set({ problem, problemWith: problem === null ? null : 'file' }),
    };
  });
}

/** Whether the basket is that of the plan, worked out to the end. */
export function isRested({ state, settling }: Studio): boolean {
  return state === 'settled' && settling?.polished === true;
}

/** What is said of a plan that is not taken over, a line for each reason. */
function refused(
  what: string,
  problems: readonly Problem[],
  problemWith: 'edit' | 'file',
): Partial<Studio> {
  return { problem: [what, ...problems.map(problemText)].join('\n'), problemWith };
}

/** What a settling changes: the last good basket stays where there is no new one. */
function heard(now: Studio, result: SettleResult): Partial<Studio> {
  const isPresent = sameShape(result.plan, now.plan);
  if (result.kind === 'failed') {
    if (!isPresent) return {};
    return {
      state: 'failed',
      problemWith: 'settling',
      problem: keepingWords.notSettled(result.reason),
    };
  }
  const { asked, polished, milliseconds, mesh } = result;
  const basket = isPresent ? { ...result.basket, plan: now.plan } : result.basket;
  return {
    basket,
    mesh,
    settling: { asked, polished, milliseconds },
    ...(isPresent && { state: 'settled' }),
    ...(isPresent && now.problemWith === 'settling' && { problem: null, problemWith: null }),
  };
}

function rowWithin(row: number | null, { bands }: Plan): number | null {
  const rows = bands.reduce((sum, band) => sum + band.rows, 0);
  return row !== null && row > rows ? null : row;
}
