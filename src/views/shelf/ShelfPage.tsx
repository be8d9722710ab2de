import { useState } from 'react';
import { shelfWords } from '#words/shelf.ts';
import { takeWords } from '#words/take.ts';
import { useKeepState } from '../../keep/shelf/keepState.ts';
import type { Card, Removed } from '../../keep/shelf/records.ts';
import { useHash } from '../bench/useHash.ts';
import { FileDrop } from '../FileDrop.tsx';
import { leaveForTour } from '../guide/leaveForTour.ts';
import { HelpPage } from '../help/HelpPage.tsx';
import { useHelp } from '../help/useHelp.ts';
import { orTell } from '../take/orTell.ts';
import { takeFiles } from '../take/takeFiles.ts';
import { tellOnShelf, useTold } from '../take/told.ts';
import { DemoShelf } from './DemoShelf.tsx';
import { PlanShelf } from './PlanShelf.tsx';
import { ShelfHead } from './ShelfHead.tsx';
import { ShelfTold } from './ShelfTold.tsx';
import { useCards } from './useCards.ts';
import { VersionDialog } from './VersionDialog.tsx';
import '../pieces.css';
import '../studio.css';
import './shelf.css';

/** The shelf: all plans of this browser, and the baskets of the class to start from. */
export function ShelfPage() {
  const db = useKeepState(({ db }) => db);
  const cards = useCards(db);
  const told = useTold();
  const help = useHelp();
  const [sought, setSought] = useState('');
  const [removed, setRemoved] = useState<Removed | null>(null);
  // the address names the plan whose earlier versions are shown
  const shown = useHash().replace(/^#shelf=?/, '');
  const take = (files: readonly File[]) =>
    orTell(takeWords.notAllTaken, async () => tellOnShelf(await takeFiles(files)));
  return (
    <div className="shelf-page">
      <ShelfHead
        cards={cards}
        sought={sought}
        onSeek={setSought}
        onFiles={take}
        onHelp={help.show}
        canKeep={db !== null}
      />
      <ShelfTold
        told={told}
        removed={removed}
        onPutBack={() => setRemoved(null)}
        onPutAway={() => tellOnShelf(null)}
      />
      <main className="shelf-main">
        {db ? (
          cards && <PlanShelf db={db} cards={cards} sought={sought} onRemoved={setRemoved} />
        ) : (
          <p className="shelf-empty">{shelfWords.noShelf}</p>
        )}
        <DemoShelf />
      </main>
      {db && shown && (
        <VersionDialog
          key={shown}
          db={db}
          id={shown}
          card={cardOf(cards, shown)}
          onClose={() => {
            globalThis.location.hash = '#shelf';
          }}
        />
      )}
      <FileDrop onFiles={take} words={shelfWords.drop} />
      <HelpPage dialog={help.dialog} page="shelf" onTour={leaveForTour} />
    </div>
  );
}

function cardOf(cards: readonly Card[] | null, id: string): Card | undefined {
  return cards?.find((card) => card.id === id);
}
