import { useState } from 'react';
import { appWords } from '#words/app.ts';
import { limits } from '../plan/limits.ts';
import type { Plan } from '../plan/schema.ts';

interface Props {
  readonly plan: Plan;
  readonly onChange: (plan: Plan, label: string) => void;
}

/** The plan's name, to read and to change. An empty name is not taken over. */
export function PlanName({ plan, onChange }: Props) {
  const [typed, setTyped] = useState<string | null>(null);
  const take = () => {
    const name = typed?.trim();
    if (name && name !== plan.name) onChange({ ...plan, name }, appWords.namingIt(name));
    setTyped(null);
  };
  return (
    <label className="plan-name">
      <span className="unseen">{appWords.planName}</span>
      <input
        value={typed ?? plan.name}
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
