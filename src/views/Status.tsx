import { useStudio } from '../keep/useStudio.ts';

/** How the settling stands: always to be seen, and read out once the shape has come to rest. */
export function Status() {
  const state = useStudio(({ state }) => state);
  const settling = useStudio(({ settling }) => settling);
  const isAtRest = state === 'settled' && settling?.polished;
  const hasConverged = useStudio(({ basket }) => basket?.settling.converged !== false);
  return (
    <p className="status" data-state={state} data-rested={isAtRest === true}>
      <span aria-hidden="true">{shown(state, hasConverged)}</span>
      <span className="unseen" role="status">
        {state === 'failed' && 'Not settled'}
        {isAtRest && (hasConverged ? 'The basket has settled' : 'The basket is not quite at rest')}
      </span>
    </p>
  );
}

function shown(state: 'settling' | 'settled' | 'failed', hasConverged: boolean): string {
  if (state === 'failed') return 'Not settled';
  if (state === 'settling') return 'Settling …';
  return hasConverged ? 'Settled' : 'Not quite at rest';
}
