import { createPortal } from 'react-dom';
import { appWords } from '#words/app.ts';

interface Props {
  /** Tries once more. */
  readonly again: () => void;
  /** Goes on without it. */
  readonly onClose: () => void;
}

const words = appWords.missed;

/** Said at the foot of the page where a part that was asked for did not come; the page stays as it is. */
export function Missed(props: Props) {
  return createPortal(
    <div className="keep-notice" role="alert">
      <p>{words.part}</p>
      <Ways {...props} close={appWords.putAway} className="keep-acts" />
    </div>,
    document.querySelector('.notices') ?? document.body,
  );
}

/** In place of a page that did not come. */
export function MissedPage(props: Props) {
  return (
    <main className="mishap" role="alert">
      <h1>{words.title}</h1>
      <p>{words.part}</p>
      <Ways {...props} close={words.back} className="mishap-buttons" />
    </main>
  );
}

interface WaysProps extends Props {
  /** What going on without it is called. */
  readonly close: string;
  readonly className: string;
}

function Ways({ again, onClose, close, className }: WaysProps) {
  return (
    <p className={className}>
      <button type="button" className="main-button" onClick={again}>
        {words.again}
      </button>
      <button type="button" onClick={() => globalThis.location.reload()}>
        {appWords.mishap.loadAgain}
      </button>
      <button type="button" onClick={onClose}>
        {close}
      </button>
    </p>
  );
}
