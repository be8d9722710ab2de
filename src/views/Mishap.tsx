import { appWords } from '#words/app.ts';
import { startAgain } from '../keep/openKept.ts';
import { presentStudio } from '../keep/useStudio.ts';
import { savePlan } from './save.ts';

interface Props {
  readonly error: unknown;
}

/** In place of a blank page: what happened, and a way to keep the plan. */
export function Mishap({ error }: Props) {
  return (
    <main className="mishap">
      <h1>{appWords.mishap.title}</h1>
      <p>{appWords.mishap.text}</p>
      <p className="mishap-buttons">
        <button
          type="button"
          className="main-button"
          onClick={() => savePlan(presentStudio().plan)}
        >
          {appWords.mishap.savePlan}
        </button>
        <button type="button" onClick={() => globalThis.location.reload()}>
          {appWords.mishap.loadAgain}
        </button>
        <button type="button" onClick={startAgain}>
          {appWords.mishap.startAgain}
        </button>
      </p>
      <details>
        <summary>{appWords.mishap.details}</summary>
        <pre>{String(error)}</pre>
      </details>
    </main>
  );
}
