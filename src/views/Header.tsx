import { appWords } from '#words/app.ts';
import { presentComparison } from '../keep/compareHere.ts';
import { useStudio } from '../keep/useStudio.ts';
import { units } from '../plan/schema.ts';
import { FileMenu } from './FileMenu.tsx';
import { PlanName } from './PlanName.tsx';
import { PrintButton } from './print/PrintButton.tsx';
import { UndoButtons } from './UndoButtons.tsx';
import { Wordmark } from './Wordmark.tsx';

interface Props {
  readonly onFiles: (files: readonly File[]) => void;
  readonly onHelp: () => void;
}

/** The head of the page: what the plan is called, and all that is done with it as a whole. */
export function Header({ onFiles, onHelp }: Props) {
  const plan = useStudio(({ plan }) => plan);
  const basket = useStudio(({ basket }) => basket);
  const change = useStudio(({ change }) => change);
  return (
    <header className="head">
      <Wordmark />
      <PlanName plan={plan} onChange={change} />
      <div className="head-tools">
        <UndoButtons />
        <a className="head-link" href="#shelf">
          {appWords.shelf}
        </a>
        <FileMenu plan={plan} basket={basket} onFiles={onFiles} />
        <button type="button" data-tour="compare" onClick={() => presentComparison().open()}>
          {appWords.compare}
        </button>
        <a className="head-link" href="#bench">
          {appWords.atTheBench}
        </a>
        <label className="head-field units-field">
          <span className="unseen">{appWords.lengthsIn}</span>
          <select
            value={plan.display.unit}
            onChange={({ target }) => {
              const unit = units.find((one) => one === target.value) ?? 'in';
              change(
                { ...plan, display: { ...plan.display, unit } },
                appWords.settingUnit(appWords.units[unit]),
              );
            }}
          >
            {units.map((unit) => (
              <option key={unit} value={unit}>
                {appWords.units[unit]}
              </option>
            ))}
          </select>
        </label>
        <PrintButton basket={basket} />
        <button
          type="button"
          data-tour="help"
          aria-label={appWords.help}
          title={appWords.helpWithKey}
          onClick={onHelp}
        >
          ?
        </button>
      </div>
    </header>
  );
}
