import { appWords } from '#words/app.ts';
import { shelfWords } from '#words/shelf.ts';
import { tellChanged } from '../../keep/keepHere.ts';
import { keepState } from '../../keep/shelf/keepState.ts';
import type { Removed } from '../../keep/shelf/records.ts';
import { putBack } from '../../keep/shelf/shelfPlans.ts';
import { orTell } from '../take/orTell.ts';
import type { Told } from '../take/told.ts';

interface Props {
  readonly told: Told | null;
  /** The plan that was deleted last, as long as it can be put back. */
  readonly removed: Removed | null;
  readonly onPutBack: () => void;
  readonly onPutAway: () => void;
}

const words = shelfWords.told;

/** What was done last: files taken in and refused, a plan deleted, with the way to put it back. */
export function ShelfTold({ told, removed, onPutBack, onPutAway }: Props) {
  const undo = async () => {
    const { db } = keepState.getState();
    if (!db || !removed) return;
    await orTell(words.notPutBack(removed.card.name), async () => {
      await putBack(db, removed);
      const { id, revision, plan } = removed.record;
      tellChanged(id, revision, plan);
      onPutBack();
    });
  };
  return (
    <div className="shelf-told" role="status">
      {removed && (
        <p>
          <span>{words.removed(removed.card.name)}</span>
          <button type="button" onClick={undo}>
            {words.putBack}
          </button>
        </p>
      )}
      {told && (told.done || told.problems.length > 0) && (
        <div className="shelf-told-files" data-refused={told.problems.length > 0}>
          <p>
            <span>{told.done || words.nothing}</span>
            <button type="button" onClick={onPutAway}>
              {appWords.putAway}
            </button>
          </p>
          {told.problems.length > 0 && (
            <ul>
              {told.problems.slice(0, mostLines).map((line) => (
                <li key={line}>{line}</li>
              ))}
              {told.problems.length > mostLines && (
                <li>{words.more(told.problems.length - mostLines)}</li>
              )}
            </ul>
          )}
        </div>
      )}
    </div>
  );
}

const mostLines = 50;
