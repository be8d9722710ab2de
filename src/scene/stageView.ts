/** The ways to look at the basket, and the two coats the stage wears. */
export type StageView = 'quarter' | 'side' | 'end' | 'top' | 'underside';
export type StageTheme = 'light' | 'dark';

/**
 * Where the eye stands for each view, as angles round the basket's middle, radians: `turn` from the
 * south (the long side) towards the east, `rise` over the table.
 */
export const stand: Readonly<Record<StageView, { readonly turn: number; readonly rise: number }>> =
  {
    quarter: { turn: 0.62, rise: 0.5 },
    side: { turn: 0, rise: 0.06 },
    end: { turn: Math.PI / 2, rise: 0.06 },
    top: { turn: 0, rise: Math.PI / 2 - 0.002 },
    underside: { turn: 0, rise: -Math.PI / 2 + 0.002 },
  };
