import { stageWords } from '#words/stage.ts';
import type { StageView } from '../keep/studio.ts';
import { stageViews } from './stageViews.ts';

interface Props {
  readonly view: StageView;
  readonly onView: (view: StageView) => void;
}

/** One button for each way to look at the basket. */
export function ViewButtons({ view: shown, onView }: Props) {
  return (
    <fieldset className="view-buttons">
      <legend className="unseen">{stageWords.lookFrom}</legend>
      {stageViews.map(({ view, title }, index) => (
        <button
          key={view}
          type="button"
          aria-pressed={shown === view}
          aria-keyshortcuts={`${index + 1}`}
          title={stageWords.viewWithKey(stageWords.viewNames[view], index + 1)}
          onClick={() => onView(view)}
        >
          {title}
        </button>
      ))}
    </fieldset>
  );
}
