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
      <h1>Girthline stopped</h1>
      <p>Something went wrong in the program, not in your basket. Your plan is still here.</p>
      <p className="mishap-buttons">
        <button
          type="button"
          className="main-button"
          onClick={() => savePlan(presentStudio().plan)}
        >
          Save the plan as a file
        </button>
        <button type="button" onClick={() => globalThis.location.reload()}>
          Load the page again
        </button>
        <button type="button" onClick={startAgain}>
          Start again with the first basket
        </button>
      </p>
      <details>
        <summary>What the program said</summary>
        <pre>{String(error)}</pre>
      </details>
    </main>
  );
}
