import { useId, useState } from 'react';
import { FieldFrame } from '../form/FieldFrame.tsx';
import type { ChoiceControl } from './control.ts';

/** One of a few words. A choice that the plan refuses is not shown as chosen. */
export function ChoiceField(props: Omit<ChoiceControl, 'kind'>) {
  const { word, label, value, choices, onCommit } = props;
  const id = useId();
  const [problem, setProblem] = useState<string | null>(null);
  return (
    <FieldFrame id={id} label={label} word={word} problem={problem}>
      <select
        id={id}
        className="field-input"
        value={value}
        aria-describedby={problem ? `${id}-problem` : undefined}
        onChange={(event) => setProblem(onCommit(event.target.value, false))}
      >
        {choices.map((choice) => (
          <option key={choice.value} value={choice.value}>
            {choice.text}
          </option>
        ))}
      </select>
    </FieldFrame>
  );
}
