import { useState } from 'react';
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

/** Puts the plan as it is now by as a version, under a name. */
export function NameVersion({ db, id }: Props) {
  const [name, setName] = useState('');
  const keep = async () => {
    if (!name.trim()) return;
    const isKept = await orTell('The version was not kept.', async () => {
      await keptHere()?.keeper.flush();
      await putBy(db, id, name.trim());
      setName('');
      shelfChanged();
    });
    // the dialog makes way for what the shelf says
    if (!isKept) globalThis.location.hash = '#shelf';
  };
  return (
    <form
      className="version-new"
      onSubmit={(event) => {
        event.preventDefault();
        void keep();
      }}
    >
      <label>
        Keep it as it is now under the name{' '}
        <input
          value={name}
          maxLength={limits.name.most}
          autoComplete="off"
          placeholder="as taught in October"
          onChange={({ target }) => setName(target.value)}
        />
      </label>
      <button type="submit" disabled={!name.trim()}>
        Keep version
      </button>
    </form>
  );
}
