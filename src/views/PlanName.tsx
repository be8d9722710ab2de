import { useState } from 'react';
import { appWords } from '#words/app.ts';
import { limits } from '../plan/limits.ts';

interface Props {
  readonly name: string;
  /** Told the new name. */
  readonly onChange: (name: string) => void;
}

/** The plan's name, to read and to change. An empty name is not taken over. */
export function PlanName({ name: known, onChange }: Props) {
  const [typed, setTyped] = useState<string | null>(null);
  const take = () => {
    const name = typed?.trim();
    if (name && name !== known) onChange(name);
    setTyped(null);
  };
  return (
    <label className="plan-name">
      <span className="unseen">{appWords.planName}</span>
      <input
        value={typed ?? known}
        maxLength={limits.name.most}
        spellCheck={false}
        autoComplete="off"
        onChange={({ target }) => setTyped(target.value)}
        onBlur={take}
        onKeyDown={({ key, currentTarget }) => {
          if (key === 'Enter') currentTarget.blur();
          if (key === 'Escape') setTyped(null);
        }}
      />
    </label>
  );
}
