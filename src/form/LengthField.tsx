import type { KeyboardEvent } from 'react';
import { useId } from 'react';
import { fieldWords } from '#words/fields.ts';
import { steppedLength } from '../plan/lengthStep.ts';
import type { Unit } from '../plan/schema.ts';
import { formatLength } from '../plan/units.ts';
import { FieldFrame } from './FieldFrame.tsx';
import { fineText, isAsShown, lengthEntry, rangeText } from './lengthEntry.ts';
import type { TradeWord } from './tradeWords.ts';
import { useDraft } from './useDraft.ts';

export interface LengthFieldProps {
  readonly label: string;
  /** A word of the trade in the label, explained beside it. */
  readonly word?: TradeWord | undefined;
  /** Length shown, mm. */
  readonly mm: number;
  /** The length at the moment of an edit, mm, where it may be newer than the one shown. */
  readonly present?: (() => number) | undefined;
  readonly unit: Unit;
  /** Least and most allowed, mm. */
  readonly least: number;
  readonly most: number;
  /** Takes the new length, mm; gives back why it cannot be, or null. `stepped` for arrow keys. */
  readonly onCommit: (mm: number, stepped: boolean) => string | null;
  readonly hideLabel?: boolean;
}

/** A length typed in any unit. What cannot be read stays as typed, with the reason beneath it. */
export function LengthField(props: LengthFieldProps) {
  const { label, word, mm, unit, least, most, onCommit, hideLabel = false } = props;
  const { present = () => mm } = props;
  const id = useId();
  const limits = { label, unit, least, most };
  const { typed, problem, type, refuse, forget, take } = useDraft(mm, onCommit);
  const shown = formatLength(mm, unit);
  const commit = () => {
    if (typed === null || isAsShown(typed, present(), unit)) return forget();
    const entry = lengthEntry(typed, limits);
    if (entry.ok) take(entry.mm, false);
    else refuse(entry.problem);
  };
  const step = (by: number, large: boolean) => {
    const entry = typed === null ? null : lengthEntry(typed, limits);
    const to = steppedLength(entry?.ok ? entry.mm : present(), unit, by, large);
    take(Math.min(most, Math.max(least, to)), true);
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === 'Enter') commit();
    if (event.key === 'Escape') forget();
    if (event.key === 'ArrowUp' || event.key === 'ArrowDown') {
      event.preventDefault();
      step(event.key === 'ArrowUp' ? 1 : -1, event.shiftKey);
    }
  };
  const fine = typed === null && !hideLabel ? fineText(mm, unit) : '';
  return (
    <FieldFrame id={id} label={label} hideLabel={hideLabel} word={word} problem={problem}>
      <input
        id={id}
        className="field-input"
        type="text"
        autoComplete="off"
        spellCheck={false}
        title={fieldWords.allowed(label, rangeText(limits))}
        value={typed ?? shown}
        aria-invalid={problem !== null}
        aria-describedby={problem ? `${id}-problem` : undefined}
        onChange={(event) => type(event.target.value)}
        onKeyDown={onKeyDown}
        onBlur={commit}
      />
      {fine && <span className="field-fine">{fine}</span>}
    </FieldFrame>
  );
}
