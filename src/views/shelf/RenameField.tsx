import { useEffect, useRef } from 'react';
import { shelfWords } from '#words/shelf.ts';
import { limits } from '../../plan/limits.ts';

interface Props {
  readonly name: string;
  /** Gets the name as typed; the old one where it was given up. */
  readonly onDone: (name: string) => void;
}

/** A plan's name while it is changed: Enter takes it, Escape leaves it. */
export function RenameField({ name, onDone }: Props) {
  const input = useRef<HTMLInputElement>(null);
  const isDone = useRef(false);
  useEffect(() => input.current?.select(), []);
  const done = (typed: string) => {
    if (isDone.current) return;
    isDone.current = true;
    onDone(typed.trim());
  };
  return (
    <input
      ref={input}
      className="shelf-rename"
      aria-label={shelfWords.card.newName}
      defaultValue={name}
      maxLength={limits.name.most}
      spellCheck={false}
      autoComplete="off"
      onBlur={({ target }) => done(target.value)}
      onKeyDown={({ key, currentTarget }) => {
        if (key === 'Enter') done(currentTarget.value);
        if (key === 'Escape') done(name);
      }}
    />
  );
}
