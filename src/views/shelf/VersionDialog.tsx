import { useEffect, useId, useRef } from 'react';
import type { Card, ShelfDb, VersionRecord } from '../../keep/shelf/records.ts';
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
}

/** The earlier versions of a plan, named and automatic, the newest first. */
export function VersionDialog({ db, id, card }: Props) {
  const dialog = useRef<HTMLDialogElement>(null);
  const title = useId();
  const versions = useVersions(db, id);
  useEffect(() => dialog.current?.showModal(), []);
  const close = () => {
    globalThis.location.hash = '#shelf';
  };
  return (
    <dialog ref={dialog} className="ask versions" aria-labelledby={title} onClose={close}>
      <header className="versions-head">
        <h2 id={title}>Versions of {card?.name ?? 'the plan'}</h2>
        <button type="button" onClick={() => dialog.current?.close()}>
          Close
        </button>
      </header>
      {card ? (
        <NameVersion db={db} id={id} />
      ) : (
        <p>This plan is not on the shelf yet. It comes there with its first change.</p>
      )}
      {card && versions?.length === 0 && (
        <p className="soft">
          None yet. Girthline puts one by every ten minutes while you change a plan.
        </p>
      )}
      <ul className="version-list">
        {versions?.map((version) => (
          <VersionLine key={version.number} db={db} version={version} />
        ))}
      </ul>
    </dialog>
  );
}

function VersionLine({ db, version }: { readonly db: ShelfDb; readonly version: VersionRecord }) {
  const when = new Date(version.made).toLocaleString([], {
    dateStyle: 'medium',
    timeStyle: 'short',
  });
  const called = version.name ?? 'put by automatically';
  return (
    <li className="version-line">
      <ThumbnailPicture thumbnail={version.thumbnail} />
      <div>
        <p className={version.name ? 'version-name' : 'soft'}>{called}</p>
        <p className="soft">{when}</p>
      </div>
      <div className="version-acts">
        <button type="button" onClick={() => bringBack(db, version)}>
          Bring back<span className="unseen"> {`${called}, ${when}`}</span>
        </button>
        <button type="button" onClick={() => laidBeside(version)}>
          Open beside<span className="unseen"> the plan as it is now {`${called}, ${when}`}</span>
        </button>
        {version.name === null && (
          <button type="button" onClick={() => namedAnew(db, version)}>
            Keep for good<span className="unseen"> the version of {when}</span>
          </button>
        )}
      </div>
    </li>
  );
}
