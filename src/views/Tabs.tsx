import type { KeyboardEvent } from 'react';
import { appWords } from '#words/app.ts';

export interface Tab<Name extends string> {
  readonly name: Name;
  readonly title: string;
}

interface Props<Name extends string> {
  readonly tabs: readonly Tab<Name>[];
  readonly chosen: Name;
  readonly onChoose: (name: Name) => void;
}

/** A bar of tabs; the panel of tab `name` has the id `room-name`. Arrow keys move along it. */
export function Tabs<Name extends string>({ tabs, chosen, onChoose }: Props<Name>) {
  const move = ({ key, currentTarget }: KeyboardEvent<HTMLDivElement>) => {
    const step = { ArrowRight: 1, ArrowLeft: -1 }[key];
    if (!step) return;
    const at = tabs.findIndex(({ name }) => name === chosen);
    const next = (at + step + tabs.length) % tabs.length;
    const tab = tabs[next];
    if (!tab) return;
    onChoose(tab.name);
    currentTarget.querySelectorAll('button')[next]?.focus();
  };
  return (
    <div className="tabs" role="tablist" aria-label={appWords.rooms.all} onKeyDown={move}>
      {tabs.map(({ name, title }) => (
        <button
          key={name}
          type="button"
          role="tab"
          id={`tab-${name}`}
          aria-controls={`room-${name}`}
          aria-selected={name === chosen}
          tabIndex={name === chosen ? 0 : -1}
          onClick={() => onChoose(name)}
        >
          {title}
        </button>
      ))}
    </div>
  );
}
