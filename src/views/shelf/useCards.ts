import { useEffect, useState } from 'react';
import { keptHere } from '../../keep/keepHere.ts';
import { useKeepState } from '../../keep/shelf/keepState.ts';
import type { Card, ShelfDb } from '../../keep/shelf/records.ts';
import { cardsOf } from '../../keep/shelf/shelfPlans.ts';

/** The cards of the shelf, the latest changed first, and anew whenever it changes; null until read. */
export function useCards(db: ShelfDb | null): readonly Card[] | null {
  const changes = useKeepState(({ changes }) => changes);
  const [cards, setCards] = useState<readonly Card[] | null>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: each change of the shelf has it read anew
  useEffect(() => {
    let isWanted = true;
    const read = async () => {
      if (!db) return;
      await keptHere()?.keeper.flush();
      const now = await cardsOf(db);
      if (isWanted) setCards(now);
    };
    read().catch(() => {});
    return () => {
      isWanted = false;
    };
  }, [db, changes]);
  return cards;
}
