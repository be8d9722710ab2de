import type { Unit } from '../../plan/schema.ts';
import { eighths, sixteenth } from './measureEntry.ts';

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
        <fieldset className="pad-fractions" aria-label="Eighths of an inch">
          {eighths.map((key) => (
            <button key={key} type="button" aria-label={key} onClick={() => onKey(key)}>
              <span className="big-fraction" aria-hidden="true">
                <span>{key[0]}</span>
                <span>{key[2]}</span>
              </span>
            </button>
          ))}
          <button type="button" aria-label="A sixteenth more" onClick={() => onKey(sixteenth)}>
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
        <button type="button" aria-label="Decimal point" onClick={() => onKey('.')}>
          .
        </button>
        <button type="button" onClick={() => onKey('0')}>
          0
        </button>
        <button type="button" aria-label="Take the last figure back" onClick={onBack}>
          ⌫
        </button>
      </div>
    </div>
  );
}
