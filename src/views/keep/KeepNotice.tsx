import { useEffect, useState } from 'react';
import { keepMine, takeTheirs } from '../../keep/clash.ts';
import type { NotKept } from '../../keep/shelf/keepState.ts';
import { useKeepState } from '../../keep/shelf/keepState.ts';
import { presentStudio } from '../../keep/useStudio.ts';
import { savePlan } from '../save.ts';
import './keepNotice.css';

const words: Readonly<Record<NotKept, string>> = {
  none: 'This browser gives Girthline no place to keep plans; perhaps this is a private window. Everything works, but your plan may be gone when you close the page: save it as a file before.',
  newer:
    'The shelf of this browser was written by a newer Girthline, so it is left untouched. Everything works here, but what you do now does not go on the shelf: save it as a file, or load the page again to get the newer one.',
  busy: 'Another window holds the shelf up. Close the other Girthline windows and load this page again; until then what you do goes nowhere but into a file you save.',
  full: 'This browser has no room left, so your last changes are not kept. Save the plan as a file now. Girthline goes on trying; deleting plans from the shelf makes room.',
  refused:
    'This browser would not keep your last changes. Save the plan as a file now. Girthline goes on trying.',
};

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
      <p>{words[notKept]}</p>
      <p className="keep-acts">
        <button
          type="button"
          className="main-button"
          onClick={() => savePlan(presentStudio().plan)}
        >
          Save as a file
        </button>
        <button type="button" onClick={() => setSeen(notKept)}>
          Put away
        </button>
      </p>
    </div>
  );
}

function ClashNotice({ isDeleted }: { readonly isDeleted: boolean }) {
  return (
    <div className="keep-notice" role="alert">
      <p>
        {isDeleted
          ? 'This plan was deleted in another window. What you have here is not on the shelf.'
          : 'This plan was changed in another window too, or on the shelf. Nothing is lost: choose which of the two goes on here.'}
      </p>
      <p className="keep-acts">
        <button type="button" className="main-button" onClick={keepMine}>
          Keep mine as a copy
        </button>
        <button type="button" onClick={takeTheirs}>
          {isDeleted ? 'Leave it deleted' : 'Take the other one'}
        </button>
      </p>
    </div>
  );
}
