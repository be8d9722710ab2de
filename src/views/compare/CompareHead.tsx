import { appWords } from '#words/app.ts';
import { compareWords as words } from '#words/compare.ts';
import { unitWords } from '#words/units.ts';
import { presentComparison, useComparison, useSide } from '../../keep/compareHere.ts';
import { units } from '../../plan/schema.ts';
import { HelpButton } from '../help/HelpButton.tsx';
import { Wordmark } from '../Wordmark.tsx';
import { showIn } from './shownPlan.ts';
import type { Reading } from './useReading.ts';

interface Props {
  readonly reading: Reading | null;
  readonly onCsv: () => void;
  readonly onPrint: () => void;
  readonly onPicture: () => void;
  readonly onHelp: () => void;
  /** True while a file is being written. */
  readonly isBusy: boolean;
}

/** The head of the page while two plans are compared. */
export function CompareHead({ reading, onCsv, onPrint, onPicture, onHelp, isBusy }: Props) {
  const unit = useSide('a', ({ plan }) => plan.display.unit);
  const by = useComparison(({ by }) => by);
  const canSave = reading !== null && !isBusy;
  return (
    <header className="head compare-head">
      <Wordmark />
      <h2 className="compare-title">{words.title}</h2>
      <div className="head-tools">
        <fieldset className="choice-pair">
          <legend>{words.by.title}</legend>
          {(['row', 'height'] as const).map((one) => (
            <button
              key={one}
              type="button"
              aria-pressed={by === one}
              onClick={() => presentComparison().compareBy(one)}
            >
              {words.by[one]}
            </button>
          ))}
        </fieldset>
        <label className="head-field units-field">
          <span className="unseen">{appWords.lengthsIn}</span>
          <select
            value={unit}
            onChange={({ target }) => showIn(units.find((one) => one === target.value) ?? 'in')}
          >
            {units.map((one) => (
              <option key={one} value={one}>
                {unitWords.length[one]}
              </option>
            ))}
          </select>
        </label>
        <button type="button" disabled={!canSave} onClick={onCsv}>
          {words.saveCsv}
        </button>
        <button type="button" disabled={!canSave} onClick={onPicture}>
          {words.savePng}
        </button>
        <button type="button" className="main-button" disabled={!canSave} onClick={onPrint}>
          {words.savePdf}
        </button>
        <button type="button" onClick={() => presentComparison().close()}>
          {words.close}
        </button>
        <HelpButton onHelp={onHelp} />
      </div>
    </header>
  );
}
