import { stageWords } from '#words/stage.ts';
import { useStudio } from '../keep/useStudio.ts';
import { Spoken } from './Spoken.tsx';

/** How the settling stands: always to be seen, and what came of it read out. */
export function Status() {
  const state = useStudio(({ state }) => state);
  const settling = useStudio(({ settling }) => settling);
  const isAtRest = state === 'settled' && settling?.polished;
  const hasConverged = useStudio(({ basket }) => basket?.settling.converged !== false);
  return (
    <p className="status" data-state={state} data-rested={isAtRest === true}>
      <span aria-hidden="true">{shown(state, hasConverged)}</span>
      <Spoken />
    </p>
  );
}

function shown(state: 'settling' | 'settled' | 'failed', hasConverged: boolean): string {
  if (state === 'failed') return stageWords.notSettled;
  if (state === 'settling') return stageWords.settling;
  return hasConverged ? stageWords.settled : stageWords.notAtRest;
}
