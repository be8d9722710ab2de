import { keepNoticeWords } from '#words/keepNotices.ts';
import { leaveUpdate, takeUpdate, useAppUpdate } from '../keep/appUpdate.ts';
import './updateNotice.css';

const words = keepNoticeWords.update;

/** Says quietly that there is a newer app, in a corner that moves nothing; the person chooses when. */
export function UpdateNotice() {
  const update = useAppUpdate();
  return (
    <div role="status">
      {update !== 'none' && (
        <div className="update-notice">
          <p>{words[update]}</p>
          <button type="button" className="main-button" onClick={takeUpdate}>
            {words.take[update]}
          </button>
          <button type="button" onClick={leaveUpdate}>
            {words.later}
          </button>
        </div>
      )}
    </div>
  );
}
