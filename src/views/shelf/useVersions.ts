import { useEffect, useState } from 'react';
import { useKeepState } from '../../keep/shelf/keepState.ts';
import type { ShelfDb, VersionRecord } from '../../keep/shelf/records.ts';
import { versionsOf } from '../../keep/shelf/versions.ts';

/** The versions of a plan, the newest first, anew whenever the shelf changes; null until read. */
export function useVersions(db: ShelfDb, id: string): readonly VersionRecord[] | null {
  const changes = useKeepState(({ changes }) => changes);
  const [versions, setVersions] = useState<readonly VersionRecord[] | null>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: each change of the shelf has them read anew
  useEffect(() => {
    let isWanted = true;
    versionsOf(db, id)
      .then((now) => isWanted && setVersions(now))
      .catch(() => {});
    return () => {
      isWanted = false;
    };
  }, [db, id, changes]);
  return versions;
}
