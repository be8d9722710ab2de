import type { ReactNode } from 'react';
import type { TradeWord } from './tradeWords.ts';
import { WordHelp } from './WordHelp.tsx';
import './field.css';

export interface FieldFrameProps {
  /** Id of the input that the label names; its problem has the id `${id}-problem`. */
  readonly id: string;
  readonly label: string;
  /** Label for the ear only, where the eye has a table heading. */
  readonly hideLabel?: boolean;
  /** A word of the trade in the label, explained beside it. */
  readonly word?: TradeWord | undefined;
  readonly problem?: string | null;
  readonly children: ReactNode;
}

/** Label, input and, beneath them, what is wrong. */
export function FieldFrame(props: FieldFrameProps) {
  const { id, label, hideLabel, word, problem, children } = props;
  return (
    <div className={problem ? 'field field-refused' : 'field'}>
      <span className={hideLabel ? 'field-unseen' : 'field-name'}>
        <label className="field-label" htmlFor={id}>
          {label}
        </label>
        {word && <WordHelp word={word} />}
      </span>
      <span className="field-line">{children}</span>
      {problem && (
        <p className="field-problem" id={`${id}-problem`} role="status">
          {problem}
        </p>
      )}
    </div>
  );
}
