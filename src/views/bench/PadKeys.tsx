import { benchPadWords } from '#words/benchPad.ts';
import type { Unit } from '../../plan/schema.ts';
import { eighths, sixteenth } from './measureEntry.ts';

const words = benchPadWords.keys;

interface Props {
  readonly unit: Unit;
  readonly onKey: (key: string) => void;
  readonly onBack: () => void;
}

const digits = ['1', '2', '3', '4', '5', '6', '7', '8', '9'] as const;

/** Keys for a wet thumb: figures, and where the plan is in inches eighths and one sixteenth more. */
export function PadKeys({ unit, onKey, onBack }: Props) {
  return (
    <div className="pad-keys">
      {unit === 'in' && (
        <fieldset className="pad-fractions" aria-label={words.eighths}>
          {eighths.map((key) => (
            <button key={key} type="button" aria-label={key} onClick={() => onKey(key)}>
              <span className="big-fraction" aria-hidden="true">
                <span>{key[0]}</span>
                <span>{key[2]}</span>
              </span>
            </button>
          ))}
          <button type="button" aria-label={words.sixteenth} onClick={() => onKey(sixteenth)}>
            <span aria-hidden="true">+</span>
            <span className="big-fraction" aria-hidden="true">
              <span>1</span>
              <span>16</span>
            </span>
          </button>
        </fieldset>
      )}
      <div className="pad-digits">
        {digits.map((key) => (
          <button key={key} type="button" onClick={() => onKey(key)}>
            {key}
          </button>
        ))}
        <button type="button" aria-label={words.point} onClick={() => onKey('.')}>
          .
        </button>
        <button type="button" onClick={() => onKey('0')}>
          0
        </button>
        <button type="button" aria-label={words.back} onClick={onBack}>
          ⌫
        </button>
      </div>
    </div>
  );
}
