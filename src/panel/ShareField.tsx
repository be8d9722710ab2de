import { useId, useState } from 'react';
import { FieldFrame } from '../form/FieldFrame.tsx';
import type { ShareControl } from './control.ts';

/** A share or a ratio on a slider, with its number beside it. */
export function ShareField(props: Omit<ShareControl, 'kind'>) {
  const { word, label, share, least, most, onCommit } = props;
  const id = useId();
  const [problem, setProblem] = useState<string | null>(null);
  return (
    <FieldFrame id={id} label={label} word={word} problem={problem}>
      <input
        id={id}
        className="panel-range"
        type="range"
        min={least}
        max={most}
        step={0.01}
        value={share}
        aria-describedby={problem ? `${id}-problem` : undefined}
        onChange={(event) => setProblem(onCommit(event.target.valueAsNumber, true))}
      />
      <output className="panel-share" htmlFor={id}>
        {share.toFixed(2)}
      </output>
    </FieldFrame>
  );
}
