import type { StageTheme } from '../stageView.ts';

/** The first and the second of two baskets. */
export type SideName = 'a' | 'b';

export interface SideLook {
  readonly colour: string;
  /** Lengths of dash and gap, cm; null for a whole line. */
  readonly dash: readonly [number, number] | null;
}

/** Each basket by colour and by line: the first blue-green and whole, the second plum and dashed. */
export const sideLook: Readonly<Record<StageTheme, Readonly<Record<SideName, SideLook>>>> = {
  light: {
    a: { colour: '#1e5a78', dash: null },
    b: { colour: '#96285c', dash: [0.7, 0.45] },
  },
  dark: {
    a: { colour: '#7fd0ea', dash: null },
    b: { colour: '#f2a0c6', dash: [0.7, 0.45] },
  },
};
