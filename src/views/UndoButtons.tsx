import { appWords } from '#words/app.ts';
import { redoLabel, undoLabel } from '../keep/history.ts';
import { useStudio } from '../keep/useStudio.ts';

/** Undo and redo, each saying what it would bring back. */
export function UndoButtons() {
  const back = useStudio(({ history }) => undoLabel(history));
  const forward = useStudio(({ history }) => redoLabel(history));
  const undo = useStudio(({ undo }) => undo);
  const redo = useStudio(({ redo }) => redo);
  return (
    <span className="button-pair">
      <button
        type="button"
        aria-label={back ? appWords.undoThis(back) : appWords.undo}
        disabled={!back}
        title={back && appWords.undoThis(back)}
        onClick={undo}
      >
        <TurnBack />
      </button>
      <button
        type="button"
        aria-label={forward ? appWords.redoThis(forward) : appWords.redo}
        disabled={!forward}
        title={forward && appWords.redoThis(forward)}
        onClick={redo}
      >
        <TurnBack isMirrored />
      </button>
    </span>
  );
}

/** An arrow that turns back to the left, or mirrored to the right. */
export function TurnBack({ isMirrored = false }: { readonly isMirrored?: boolean }) {
  return (
    <svg
      className="turn-back"
      viewBox="0 0 24 24"
      aria-hidden="true"
      transform={isMirrored ? 'scale(-1 1)' : undefined}
    >
      <path d="M9 5 4 10l5 5M4 10h10a5 5 0 0 1 0 10h-4" />
    </svg>
  );
}
