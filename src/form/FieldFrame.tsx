import type { ReactNode } from 'react';
import './field.css';

export interface FieldFrameProps {
  /** Id of the input that the label names; its problem has the id `${id}-problem`. */
  readonly id: string;
  readonly label: string;
  /** Label for the ear only, where the eye has a table heading. */
  readonly hideLabel?: boolean;
  readonly problem?: string | null;
  readonly children: ReactNode;
}

/** Label, input and, beneath them, what is wrong. */
export function FieldFrame({ id, label, hideLabel, problem, children }: FieldFrameProps) {
  return (
    <div className={problem ? 'field field-refused' : 'field'}>
      <label className={hideLabel ? 'field-unseen' : 'field-label'} htmlFor={id}>
        {label}
      </label>
      <span className="field-line">{children}</span>
      {problem && (
        <p className="field-problem" id={`${id}-problem`} role="status">
          {problem}
        </p>
      )}
    </div>
  );
}
