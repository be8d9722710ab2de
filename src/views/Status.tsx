import { useStudio } from '../keep/useStudio.ts';

/** How the settling stands: always to be seen, and read out once the shape has come to rest. */
export function Status() {
  const state = useStudio(({ state }) => state);
  const settling = useStudio(({ settling }) => settling);
  const isAtRest = state === 'settled' && settling?.polished;
  return (
    <p className="status" data-state={state} data-rested={isAtRest === true}>
      <span aria-hidden="true">{shown(state, settling?.milliseconds)}</span>
      <span className="unseen" role="status">
        {state === 'failed' && 'Not settled'}
        {isAtRest && 'The basket has settled'}
      </span>
    </p>
  );
}

function shown(state: 'settling' | 'settled' | 'failed', milliseconds = 0): string {
  if (state === 'failed') return 'Not settled';
  if (state === 'settling') return 'Settling …';
  return milliseconds < 1 ? 'Settled in under 1 ms' : `Settled in ${Math.round(milliseconds)} ms`;
}
