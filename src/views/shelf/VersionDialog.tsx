import { useEffect, useId, useRef } from 'react';
import { appWords } from '#words/app.ts';
import { shelfWords } from '#words/shelf.ts';
import type { Card, ShelfDb, VersionRecord } from '../../keep/shelf/records.ts';
import { dateTimeText } from '../dates.ts';
import { NameVersion } from './NameVersion.tsx';
import { ThumbnailPicture } from './ThumbnailPicture.tsx';
import { useVersions } from './useVersions.ts';
import { bringBack, laidBeside, namedAnew } from './versionActs.ts';
import '../ask/ask.css';

interface Props {
  readonly db: ShelfDb;
  /** The plan. */
  readonly id: string;
  /** Undefined until the shelf is read, or for a plan that is not on it. */
  readonly card: Card | undefined;
  /** Goes back to where one came from. */
  readonly onClose: () => void;
}

const words = shelfWords.versions;

/** The earlier versions of a plan, named and automatic, the newest first. */
export function VersionDialog({ db, id, card, onClose }: Props) {
  const dialog = useRef<HTMLDialogElement>(null);
  const title = useId();
  const versions = useVersions(db, id);
  useEffect(() => dialog.current?.showModal(), []);
  return (
    <dialog ref={dialog} className="ask versions" aria-labelledby={title} onClose={onClose}>
      <header className="versions-head">
        <h2 id={title}>{card ? shelfWords.card.versionsOf(card.name) : words.ofThePlan}</h2>
        <button type="button" onClick={() => dialog.current?.close()}>
          {appWords.close}
        </button>
      </header>
      {card ? <NameVersion db={db} id={id} /> : <p>{words.notOnShelf}</p>}
      {card && versions?.length === 0 && <p className="soft">{words.none}</p>}
      <ul className="version-list">
        {versions?.map((version) => (
          <VersionLine key={version.number} db={db} version={version} />
        ))}
      </ul>
    </dialog>
  );
}

function VersionLine({ db, version }: { readonly db: ShelfDb; readonly version: VersionRecord }) {
  const when = dateTimeText(version.made);
  const called = version.name ?? words.automatic;
  return (
    <li className="version-line">
      <ThumbnailPicture thumbnail={version.thumbnail} />
      <div>
        <p className={version.name ? 'version-name' : 'soft'}>{called}</p>
        <p className="soft">{when}</p>
      </div>
      <div className="version-acts">
        <button
          type="button"
          aria-label={words.bringBackThis(called, when)}
          onClick={() => bringBack(db, version)}
        >
          {words.bringBack}
        </button>
        <button
          type="button"
          aria-label={words.openThisBeside(called, when)}
          onClick={() => laidBeside(version)}
        >
          {words.openBeside}
        </button>
        {version.name === null && (
          <button
            type="button"
            aria-label={words.keepThisForGood(when)}
            onClick={() => namedAnew(db, version)}
          >
            {words.keepForGood}
          </button>
        )}
      </div>
    </li>
  );
}
