import { stageWords } from '#words/stage.ts';
import type { StageView } from '../keep/studio.ts';

/** The five ways to look at the basket, in the order of their keys 1 to 5. */
export const stageViews: readonly { readonly view: StageView; readonly title: string }[] = [
  { view: 'quarter', title: stageWords.views.quarter },
  { view: 'side', title: stageWords.views.side },
  { view: 'end', title: stageWords.views.end },
  { view: 'top', title: stageWords.views.top },
  { view: 'underside', title: stageWords.views.underside },
];
