import { appWords } from '#words/app.ts';
import { compareWords } from '#words/compare.ts';
import { planLetters } from '#words/planLetters.ts';
import { PlanSign } from '../../charts/compare/PlanSign.tsx';
import { presentComparison, presentSide, useComparison, useSide } from '../../keep/compareHere.ts';
import type { Side } from '../../keep/compareStudio.ts';
import { redoLabel, undoLabel } from '../../keep/history.ts';
import { PlanName } from '../PlanName.tsx';
import { TurnBack } from '../UndoButtons.tsx';
import { SideChooser } from './SideChooser.tsx';
import { SideState } from './SideState.tsx';

const words = compareWords.side;

interface Props {
  readonly side: Side;
  readonly onFindings: (side: Side) => void;
}

/** One of the two plans: its name, where it comes from, its own undo, and whether it is edited. */
export function SideCard({ side, onFindings }: Props) {
  const plan = useSide(side, ({ plan }) => plan);
  const back = useSide(side, ({ history }) => undoLabel(history));
  const forward = useSide(side, ({ history }) => redoLabel(history));
  const edited = useComparison(({ edited }) => edited);
  const letter = planLetters[side];
  return (
    <section
      className={`side-card side-${side}`}
      data-edited={edited === side}
      aria-label={words.title(letter)}
    >
      <div className="side-line">
        <PlanSign side={side} />
        <PlanName
          name={plan.name}
          onChange={(name) => presentSide(side).change({ ...plan, name }, appWords.namingIt(name))}
        />
        <label className="side-edit" title={words.editKey}>
          <input
            type="radio"
            name="edited-plan"
            aria-keyshortcuts="e"
            checked={edited === side}
            onChange={() => presentComparison().edit(side)}
          />
          {words.edit(letter)}
        </label>
      </div>
      <div className="side-line">
        <SideChooser side={side} />
        <span className="button-pair">
          <button
            type="button"
            aria-label={words.undoIn(letter)}
            disabled={!back}
            title={back && appWords.undoThis(back)}
            onClick={() => presentSide(side).undo()}
          >
            <TurnBack />
          </button>
          <button
            type="button"
            aria-label={words.redoIn(letter)}
            disabled={!forward}
            title={forward && appWords.redoThis(forward)}
            onClick={() => presentSide(side).redo()}
          >
            <TurnBack isMirrored />
          </button>
        </span>
        <SideState side={side} onFindings={() => onFindings(side)} />
      </div>
    </section>
  );
}
