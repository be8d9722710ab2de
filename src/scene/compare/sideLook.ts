import type { StageTheme } from '../stageView.ts';

/** The first and the second of two baskets. */
export type SideName = 'a' | 'b';

export interface SideLook {
  readonly colour: string;
  /** Of the edge round the line, so that it stands out from any strand. */
  readonly edge: string;
  /** Lengths of dash and gap, and how far before its beginning the line begins, cm; null for a whole line. */
  readonly dash: readonly [dash: number, gap: number, offset: number] | null;
}

/** Each basket by colour and by line: the first blue-green and whole, the second plum and dashed. */
export const sideLook: Readonly<Record<StageTheme, Readonly<Record<SideName, SideLook>>>> = {
  light: {
    a: { colour: '#1e5a78', edge: '#fffaf0', dash: null },
    b: { colour: '#96285c', edge: '#fffaf0', dash: [0.7, 0.45, 0] },
  },
  dark: {
    a: { colour: '#7fd0ea', edge: '#10181c', dash: null },
    b: { colour: '#f2a0c6', edge: '#10181c', dash: [0.7, 0.45, 0] },
  },
};
