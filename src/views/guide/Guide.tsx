import { useState } from 'react';
import { appWords } from '#words/app.ts';
import { isGreeted, keepGreeted } from '../../keep/guideSeen.ts';
import { fetched } from '../fetched.tsx';
import { Missed } from '../Missed.tsx';
import { SafetyNet } from '../SafetyNet.tsx';
import './guide.css';

const tour = fetched(async () => (await import('./Tour.tsx')).Tour);

interface Props {
  readonly isTouring: boolean;
  readonly onStart: () => void;
  readonly onEnd: () => void;
}

/** For those who are new here: a line that offers the tour until it is put away, and the tour itself. */
export function Guide({ isTouring, onStart, onEnd }: Props) {
  const [isKnown, setKnown] = useState(isGreeted);
  const know = () => {
    keepGreeted();
    setKnown(true);
  };
  if (isTouring) {
    return (
      <SafetyNet under={() => null}>
        <tour.View
          missed={(again) => <Missed again={again} onClose={onEnd} />}
          onEnd={() => {
            know();
            onEnd();
          }}
        />
      </SafetyNet>
    );
  }
  if (isKnown) return null;
  return (
    <aside className="greeting" aria-label={appWords.newcomer.label}>
      <p>{appWords.newcomer.text}</p>
      <button type="button" className="main-button" onClick={onStart}>
        {appWords.newcomer.showMeRound}
      </button>
      <button type="button" onClick={know}>
        {appWords.newcomer.notNow}
      </button>
    </aside>
  );
}
