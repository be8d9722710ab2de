import { appWords } from '#words/app.ts';
import { unitWords } from '#words/units.ts';
import { presentComparison } from '../keep/compareHere.ts';
import { presentStudio, useStudio } from '../keep/useStudio.ts';
import { units } from '../plan/schema.ts';
import { FileMenu } from './FileMenu.tsx';
import { HelpButton } from './help/HelpButton.tsx';
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
  // no more than is shown, so that a drag does not draw the head anew
  const name = useStudio(({ plan }) => plan.name);
  const unitNow = useStudio(({ plan }) => plan.display.unit);
  return (
    <header className="head">
      <Wordmark />
      <PlanName name={name} onChange={rename} />
      <div className="head-tools">
        <UndoButtons />
        <a className="head-link" href="#shelf">
          {appWords.shelf}
        </a>
        <FileMenu onFiles={onFiles} />
        <button type="button" data-tour="compare" onClick={() => presentComparison().open()}>
          {appWords.compare}
        </button>
        <a className="head-link" href="#bench">
          {appWords.atTheBench}
        </a>
        <label className="head-field units-field">
          <span className="unseen">{appWords.lengthsIn}</span>
          <select
            value={unitNow}
            onChange={({ target }) => {
              const unit = units.find((one) => one === target.value) ?? 'in';
              const { plan, change } = presentStudio();
              change(
                { ...plan, display: { ...plan.display, unit } },
                appWords.settingUnit(unitWords.names[unit]),
              );
            }}
          >
            {units.map((unit) => (
              <option key={unit} value={unit}>
                {unitWords.names[unit]}
              </option>
            ))}
          </select>
        </label>
        <PrintButton />
        <HelpButton onHelp={onHelp} />
      </div>
    </header>
  );
}

function rename(name: string): void {
  const { plan, change } = presentStudio();
  change({ ...plan, name }, appWords.namingIt(name));
}
