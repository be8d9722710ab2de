import { useId, useState } from 'react';
import { shelfWords } from '#words/shelf.ts';
import { Sentence } from '../../form/Sentence.tsx';
import { keptHere } from '../../keep/keepHere.ts';
import { shelfChanged } from '../../keep/shelf/keepState.ts';
import type { ShelfDb } from '../../keep/shelf/records.ts';
import { putBy } from '../../keep/shelf/versions.ts';
import { limits } from '../../plan/limits.ts';
import { orTell } from '../take/orTell.ts';

interface Props {
  readonly db: ShelfDb;
  readonly id: string;
}

const words = shelfWords.versions;

/** Puts the plan as it is now by as a version, under a name. */
export function NameVersion({ db, id: plan }: Props) {
  const id = useId();
  const [name, setName] = useState('');
  const keep = async () => {
    if (!name.trim()) return;
    const isKept = await orTell(words.notKept, async () => {
      await keptHere()?.keeper.flush();
      await putBy(db, plan, name.trim());
      setName('');
      shelfChanged();
    });
    // the dialog makes way for what the shelf says
    if (!isKept) globalThis.location.hash = '#shelf';
  };
  const field = (
    <input
      id={id}
      value={name}
      maxLength={limits.name.most}
      autoComplete="off"
      placeholder={words.example}
      onChange={({ target }) => setName(target.value)}
    />
  );
  return (
    <form
      className="version-new"
      onSubmit={(event) => {
        event.preventDefault();
        void keep();
      }}
    >
      <label htmlFor={id}>
        <Sentence text={words.keepUnder} places={{ name: field }} />
      </label>
      <button type="submit" disabled={!name.trim()}>
        {words.keep}
      </button>
    </form>
  );
}
