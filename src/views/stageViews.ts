import type { StageView } from '../keep/studio.ts';

/** The five ways to look at the basket, in the order of their keys 1 to 5. */
export const stageViews: readonly { readonly view: StageView; readonly title: string }[] = [
  { view: 'quarter', title: 'Three-quarter' },
  { view: 'side', title: 'Side' },
  { view: 'end', title: 'End' },
  { view: 'top', title: 'Top' },
  { view: 'underside', title: 'Underside' },
];
