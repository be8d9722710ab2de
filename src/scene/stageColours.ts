import type { StageTheme } from './stageView.ts';

export interface StageColours {
  readonly background: string;
  readonly table: string;
  /** Light from above and from all round below. */
  readonly sky: string;
  readonly ground: string;
  readonly ambient: number;
  readonly key: number;
  readonly fill: number;
  /** Darkness of the shade under the basket, 0 … 1. */
  readonly shade: number;
  /** The row pointed at. */
  readonly accent: string;
  /** Dimension lines. */
  readonly ink: string;
}

export const stageColours: Readonly<Record<StageTheme, StageColours>> = {
  light: {
    background: '#f1eadd',
    table: '#c3a788',
    sky: '#fff9f0',
    ground: '#dccbb4',
    ambient: 1.85,
    key: 2.3,
    fill: 0.7,
    shade: 0.42,
    accent: '#1e6a86',
    ink: '#3a2f22',
  },
  dark: {
    background: '#211e1a',
    table: '#75604d',
    sky: '#f6ecdc',
    ground: '#8a7a68',
    ambient: 1.1,
    key: 1.7,
    fill: 0.5,
    shade: 0.55,
    accent: '#58b6d2',
    ink: '#f1e9db',
  },
};
