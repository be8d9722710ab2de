import { useEffect, useState } from 'react';
import { appWords } from '#words/app.ts';
import { keepNoticeWords } from '#words/keepNotices.ts';
import { keepMine, takeTheirs } from '../../keep/clash.ts';
import type { NotKept } from '../../keep/shelf/keepState.ts';
import { useKeepState } from '../../keep/shelf/keepState.ts';
import { presentStudio } from '../../keep/useStudio.ts';
import { savePlan } from '../save.ts';
import './keepNotice.css';

/** Says at the foot of the page when a plan is not kept, or two windows have changed it, and the ways on. */
export function KeepNotice() {
  const notKept = useKeepState(({ notKept }) => notKept);
  const clash = useKeepState(({ clash }) => clash);
  const [seen, setSeen] = useState<NotKept | null>(null);
  // said anew when it happens again
  useEffect(() => {
    if (notKept === null) setSeen(null);
  }, [notKept]);
  if (notKept === null || notKept === seen) {
    return clash === undefined ? null : <ClashNotice isDeleted={clash === null} />;
  }
  return (
    <div className="keep-notice" role="alert">
      <p>{keepNoticeWords.notKept[notKept]}</p>
      <p className="keep-acts">
        <button
          type="button"
          className="main-button"
          onClick={() => savePlan(presentStudio().plan)}
        >
          {appWords.file.save}
        </button>
        <button type="button" onClick={() => setSeen(notKept)}>
          {appWords.putAway}
        </button>
      </p>
    </div>
  );
}

function ClashNotice({ isDeleted }: { readonly isDeleted: boolean }) {
  const words = keepNoticeWords.clash;
  return (
    <div className="keep-notice" role="alert">
      <p>{isDeleted ? words.deleted : words.changed}</p>
      <p className="keep-acts">
        <button type="button" className="main-button" onClick={keepMine}>
          {words.keepMine}
        </button>
        <button type="button" onClick={takeTheirs}>
          {isDeleted ? words.leaveDeleted : words.takeTheirs}
        </button>
      </p>
    </div>
  );
}
