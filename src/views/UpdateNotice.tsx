import type { AppUpdate } from '../keep/appUpdate.ts';
import { leaveUpdate, takeUpdate, useAppUpdate } from '../keep/appUpdate.ts';
import './updateNotice.css';

const words: Readonly<Record<Exclude<AppUpdate, 'none'>, { text: string; take: string }>> = {
  ready: { text: 'A newer Girthline is ready.', take: 'Load it now' },
  elsewhere: {
    text: 'Another window has loaded a newer Girthline. This one may miss parts until it is loaded again.',
    take: 'Load again',
  },
};

/** Says quietly that there is a newer app, in a corner that moves nothing; the person chooses when. */
export function UpdateNotice() {
  const update = useAppUpdate();
  return (
    <div role="status">
      {update !== 'none' && (
        <div className="update-notice">
          <p>{words[update].text} Your plan stays as it is.</p>
          <button type="button" className="main-button" onClick={takeUpdate}>
            {words[update].take}
          </button>
          <button type="button" onClick={leaveUpdate}>
            Later
          </button>
        </div>
      )}
    </div>
  );
}
