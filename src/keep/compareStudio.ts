/** Two plans side by side: which are shown and how. Each plan has a studio, and undo, of its own. */
import type { StoreApi } from 'zustand/vanilla';
import { createStore } from 'zustand/vanilla';
import { keepingWords } from '#words/keeping.ts';
import { limits } from '../plan/limits.ts';
import type { Plan } from '../plan/schema.ts';
import type { StageView, Studio } from './studio.ts';

/** The first plan, which is that of the page, and the second. */
export type Side = 'a' | 'b';

export interface Comparison {
  /** True while the two plans are what the page shows. */
  readonly isOpen: boolean;
  /** The second plan's studio; null until the plans are first compared. */
  readonly second: StoreApi<Studio> | null;
  /** Which plan the panel and the girth points edit. */
  readonly edited: Side;
  /** Both as woven next to each other, or one laid over the other. */
  readonly layout: 'beside' | 'over';
  /** Laid over: the one drawn as woven; of the other, the outline. */
  readonly solid: Side;
  readonly by: 'row' | 'height';
  /** Row or height pointed at, counted from 1. */
  readonly place: number | null;
  /** Of the third plan: 0 is the first girth line, 1 the second. */
  readonly share: number;
  readonly view: StageView;
  /** Counts the times a view was asked for, the same one again included. */
  readonly looks: number;
  open(): void;
  close(): void;
  edit(side: Side): void;
  lay(layout: 'beside' | 'over'): void;
  draw(solid: Side): void;
  compareBy(by: 'row' | 'height'): void;
  pointAt(place: number | null): void;
  blendTo(share: number): void;
  look(view: StageView): void;
}

/** A comparison of the plan of `first`; the second begins as its copy, settled by workers of its own. */
export function comparison(
  first: StoreApi<Studio>,
  startSecond: (plan: Plan) => StoreApi<Studio>,
): StoreApi<Comparison> {
  return createStore<Comparison>((set, get) => ({
    isOpen: false,
    second: null,
    edited: 'b',
    layout: 'beside',
    solid: 'a',
    by: 'row',
    place: null,
    share: 0.5,
    view: 'quarter',
    looks: 0,
    open() {
      const { view, theme, plan } = first.getState();
      const second = get().second ?? startSecond(copyOf(plan));
      second.getState().wear(theme);
      set({ isOpen: true, second, view, place: null });
    },
    close() {
      first.getState().look(get().view);
      set({ isOpen: false, place: null });
    },
    edit: (edited) => set({ edited }),
    lay: (layout) => set({ layout, looks: get().looks + 1 }),
    draw: (solid) => set({ solid }),
    compareBy: (by) => set({ by, place: null }),
    pointAt(place) {
      if (place !== get().place) set({ place });
    },
    blendTo: (share) => set({ share: Math.min(1, Math.max(0, share)) }),
    look: (view) => set({ view, looks: get().looks + 1 }),
  }));
}

/** `plan` under a name that tells it from the first. */
export function copyOf(plan: Plan): Plan {
  const ending = keepingWords.second;
  const name = `${plan.name.slice(0, limits.name.most - ending.length)}${ending}`;
  return { ...plan, name };
}
