import type { StageView } from '../keep/studio.ts';
import { stageViews } from './stageViews.ts';

interface Props {
  readonly view: StageView;
  readonly onView: (view: StageView) => void;
}

/** One button for each way to look at the basket. */
export function ViewButtons({ view, onView }: Props) {
  return (
    <fieldset className="view-buttons">
      <legend className="unseen">Look at the basket from</legend>
      {stageViews.map((one, index) => (
        <button
          key={one.view}
          type="button"
          aria-pressed={view === one.view}
          aria-keyshortcuts={`${index + 1}`}
          title={`${one.title} view (key ${index + 1})`}
          onClick={() => onView(one.view)}
        >
          {one.title}
        </button>
      ))}
    </fieldset>
  );
}
