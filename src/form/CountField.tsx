import type { KeyboardEvent } from 'react';
import { useId } from 'react';
import { fieldWords } from '#words/fields.ts';
import { withPlainFigures } from '../plan/plainFigures.ts';
import { FieldFrame } from './FieldFrame.tsx';
import type { TradeWord } from './tradeWords.ts';
import { useDraft } from './useDraft.ts';

export interface CountFieldProps {
  readonly label: string;
  /** A word of the trade in the label, explained beside it. */
  readonly word?: TradeWord | undefined;
  readonly count: number;
  readonly least: number;
  readonly most: number;
  /** Takes the new count; gives back why it cannot be, or null. `stepped` for keys and buttons. */
  readonly onCommit: (count: number, stepped: boolean) => string | null;
}

/** A whole number with a button for one less and one more. */
export function CountField({ label, word, count, least, most, onCommit }: CountFieldProps) {
  const id = useId();
  const { typed, problem, type, refuse, forget, take } = useDraft(count, onCommit);
  const commit = () => {
    if (typed === null || typed === `${count}`) return forget();
    const figures = withPlainFigures(typed).trim();
    const whole = Number(figures);
    const fits = figures !== '' && Number.isInteger(whole) && whole >= least && whole <= most;
    if (fits) take(whole, false);
    else refuse(fieldWords.refused(label, fieldWords.range(`${least}`, `${most}`), typed.trim()));
  };
  const step = (by: number) => {
    const to = Math.min(most, Math.max(least, count + by));
    if (to !== count) take(to, true);
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === 'Enter') commit();
    if (event.key === 'Escape') forget();
    if (event.key === 'ArrowUp' || event.key === 'ArrowDown') {
      event.preventDefault();
      step(event.key === 'ArrowUp' ? 1 : -1);
    }
  };
  const stepButton = (by: -1 | 1) => (
    <button
      type="button"
      className="field-step"
      aria-label={by < 0 ? fieldWords.oneLess(label) : fieldWords.oneMore(label)}
      disabled={by < 0 ? count <= least : count >= most}
      onClick={() => step(by)}
    >
      {by < 0 ? '−' : '+'}
    </button>
  );
  return (
    <FieldFrame id={id} label={label} word={word} problem={problem}>
      {stepButton(-1)}
      <input
        id={id}
        className="field-input field-number"
        type="text"
        role="spinbutton"
        inputMode="numeric"
        autoComplete="off"
        aria-valuemin={least}
        aria-valuemax={most}
        aria-valuenow={count}
        value={typed ?? count}
        aria-invalid={problem !== null}
        aria-describedby={problem ? `${id}-problem` : undefined}
        onChange={(event) => type(event.target.value)}
        onKeyDown={onKeyDown}
        onBlur={commit}
      />
      {stepButton(1)}
    </FieldFrame>
  );
}
