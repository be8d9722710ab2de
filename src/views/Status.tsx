import { stageWords } from '#words/stage.ts';
import { isRested } from '../keep/studio.ts';
import { useStudio } from '../keep/useStudio.ts';
import { Spoken } from './Spoken.tsx';

/** How the settling stands: always to be seen, and what came of it read out. */
export function Status() {
  const state = useStudio(({ state }) => state);
  const isAtRest = useStudio(isRested);
  const hasConverged = useStudio(({ basket }) => basket?.settling.converged !== false);
  return (
    <p className="status" data-state={state} data-rested={isAtRest}>
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
