import { compareWords } from '#words/compare.ts';
import { planLetters } from '#words/planLetters.ts';
import { stageWords } from '#words/stage.ts';
import { useSide } from '../../keep/compareHere.ts';
import type { Side } from '../../keep/compareStudio.ts';
import { isRested } from '../../keep/studio.ts';

const words = compareWords.side;
const { settling, settled, notSettled } = stageWords;
const states = { settling, settled, failed: notSettled };

interface Props {
  readonly side: Side;
  readonly onFindings: () => void;
}

/** How a plan's settling stands, and how many findings there are. */
export function SideState({ side, onFindings }: Props) {
  const state = useSide(side, ({ state }) => state);
  const findings = useSide(side, ({ basket }) => basket?.findings);
  const grave = findings?.filter(({ severity }) => severity !== 'note') ?? [];
  const severity = grave.some((one) => one.severity === 'stop') ? 'stop' : 'warn';
  const isAtRest = useSide(side, isRested);
  return (
    <span className="side-state" data-state={state} data-rested={isAtRest}>
      <span aria-hidden="true">{states[state]}</span>
      <span className="unseen" role="status">
        {state === 'failed' && words.hasNotSettled(planLetters[side])}
        {isAtRest && words.hasSettled(planLetters[side])}
      </span>
      {grave.length > 0 && (
        <button
          type="button"
          className="side-findings"
          data-severity={severity}
          onClick={onFindings}
        >
          {stageWords.toLookAt(grave.length)}
        </button>
      )}
    </span>
  );
}
