import { presentComparison } from '../keep/compareHere.ts';
import { presentStudio, useStudio } from '../keep/useStudio.ts';
import type { Unit } from '../plan/schema.ts';
import { units } from '../plan/schema.ts';
import { DemoChooser } from './DemoChooser.tsx';
import { OpenButton } from './OpenButton.tsx';
import { PlanName } from './PlanName.tsx';
import { PrintButton } from './print/PrintButton.tsx';
import { savePlan, saveRows } from './save.ts';
import { UndoButtons } from './UndoButtons.tsx';

interface Props {
  readonly onFile: (file: File) => void;
  readonly onKeys: () => void;
}

const unitTitles: Readonly<Record<Unit, string>> = {
  in: 'inches',
  cm: 'centimetres',
  mm: 'millimetres',
};

/** The head of the page: what the plan is called, and all that is done with it as a whole. */
export function Header({ onFile, onKeys }: Props) {
  const plan = useStudio(({ plan }) => plan);
  const basket = useStudio(({ basket }) => basket);
  const change = useStudio(({ change }) => change);
  return (
    <header className="head">
      <h1 className="wordmark">
        <img src="./icon.svg" alt="" width="28" height="28" />
        Girthline
      </h1>
      <PlanName plan={plan} onChange={change} />
      <div className="head-tools">
        <UndoButtons />
        <DemoChooser onOpen={(chosen) => presentStudio().open(chosen)} />
        <OpenButton onFile={onFile} />
        <button type="button" onClick={() => savePlan(plan)}>
          Save
        </button>
        <button type="button" onClick={() => presentComparison().open()}>
          Compare
        </button>
        <a className="head-link" href="#bench">
          At the bench
        </a>
        <label className="head-field units-field">
          <span className="unseen">Lengths in</span>
          <select
            value={plan.display.unit}
            onChange={({ target }) => {
              const unit = units.find((one) => one === target.value) ?? 'in';
              change(
                { ...plan, display: { ...plan.display, unit } },
                `lengths in ${unitTitles[unit]}`,
              );
            }}
          >
            {units.map((unit) => (
              <option key={unit} value={unit}>
                {unitTitles[unit]}
              </option>
            ))}
          </select>
        </label>
        <button
          type="button"
          className="main-button"
          aria-label="Row chart (CSV)"
          disabled={!basket}
          onClick={() => basket && saveRows(basket)}
        >
          <span className="wide-only">Row chart</span> CSV
        </button>
        <PrintButton basket={basket} />
        <button
          type="button"
          className="keys-button"
          aria-label="List of keys"
          title="List of keys (?)"
          onClick={onKeys}
        >
          ?
        </button>
      </div>
    </header>
  );
}
