import { useState } from 'react';
import { appWords } from '#words/app.ts';
import { shelfWords } from '#words/shelf.ts';
import type { Card } from '../../keep/shelf/records.ts';
import { FilePick } from '../FilePick.tsx';
import { HelpButton } from '../help/HelpButton.tsx';
import { orTell } from '../take/orTell.ts';
import { Wordmark } from '../Wordmark.tsx';
import { saveShelf } from './saveShelf.ts';

interface Props {
  /** Null until the shelf is read. */
  readonly cards: readonly Card[] | null;
  readonly sought: string;
  readonly onSeek: (sought: string) => void;
  readonly onFiles: (files: readonly File[]) => void;
  readonly onHelp: () => void;
  readonly canKeep: boolean;
}

/** The head of the shelf: search, files in and out, and the way back. */
export function ShelfHead({ cards, sought, onSeek, onFiles, onHelp, canKeep }: Props) {
  const [isBusy, setBusy] = useState(false);
  const save = async () => {
    setBusy(true);
    await orTell(shelfWords.notSaved, saveShelf);
    setBusy(false);
  };
  return (
    <header className="head shelf-head">
      <Wordmark />
      <h2 className="shelf-title">{appWords.shelf}</h2>
      <label className="shelf-search">
        <span className="unseen">{shelfWords.search}</span>
        <input
          type="search"
          placeholder={shelfWords.searchIn}
          value={sought}
          onChange={({ target }) => onSeek(target.value)}
        />
      </label>
      <div className="head-tools">
        <FilePick label={shelfWords.openFiles} isMany onFiles={onFiles} />
        {canKeep && (
          <button type="button" disabled={isBusy || !cards?.length} onClick={save}>
            {isBusy ? shelfWords.packing : shelfWords.saveAll}
          </button>
        )}
        <a className="head-link" href="#plan">
          {shelfWords.back}
        </a>
        <HelpButton onHelp={onHelp} />
      </div>
    </header>
  );
}
