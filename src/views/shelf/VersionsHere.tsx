import { useKeepState } from '../../keep/shelf/keepState.ts';
import { useCards } from './useCards.ts';
import { VersionDialog } from './VersionDialog.tsx';
import './shelf.css';

/** The earlier versions of the plan with this id, over the page of the plan; closed, one is there again. */
export function VersionsHere({ id }: { readonly id: string }) {
  const db = useKeepState(({ db }) => db);
  const cards = useCards(db);
  if (!db || !cards) return null;
  return (
    <VersionDialog
      key={id}
      db={db}
      id={id}
      card={cards.find((card) => card.id === id)}
      onClose={() => {
        globalThis.location.hash = '#plan';
      }}
    />
  );
}
