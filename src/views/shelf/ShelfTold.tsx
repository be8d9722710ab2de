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

/** What was done last: files taken in and refused, a plan deleted, with the way to put it back. */
export function ShelfTold({ told, removed, onPutBack, onPutAway }: Props) {
  const undo = async () => {
    const { db } = keepState.getState();
    if (!db || !removed) return;
    await orTell(`“${removed.card.name}” was not put back.`, async () => {
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
          <span>“{removed.card.name}” is off the shelf.</span>
          <button type="button" onClick={undo}>
            Put it back
          </button>
        </p>
      )}
      {told && (told.done || told.problems.length > 0) && (
        <div className="shelf-told-files" data-refused={told.problems.length > 0}>
          <p>
            <span>{told.done || 'Nothing was taken in.'}</span>
            <button type="button" onClick={onPutAway}>
              Put away
            </button>
          </p>
          {told.problems.length > 0 && (
            <ul>
              {told.problems.slice(0, mostLines).map((line) => (
                <li key={line}>{line}</li>
              ))}
              {told.problems.length > mostLines && (
                <li>and {told.problems.length - mostLines} more</li>
              )}
            </ul>
          )}
        </div>
      )}
    </div>
  );
}

const mostLines = 50;
