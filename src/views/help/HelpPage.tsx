import type { RefObject } from 'react';
import { memo } from 'react';
import { appWords } from '#words/app.ts';
import { helpWords } from '#words/help.ts';
import { tradeWords } from '#words/trade.ts';
import { helpKeys } from './helpKeys.ts';
import './help.css';

interface Props {
  readonly dialog: RefObject<HTMLDialogElement | null>;
  /** Whose keys are told. */
  readonly page: keyof typeof helpKeys;
  readonly onTour: () => void;
}

/** Tour, words of the trade and keys, in a dialog that its opener shows. */
export const HelpPage = memo(function HelpPage({ dialog, page, onTour }: Props) {
  const start = () => {
    dialog.current?.close();
    onTour();
  };
  return (
    <dialog ref={dialog} className="help" aria-labelledby="help-title">
      <header className="help-head">
        <h2 id="help-title">{helpWords.title}</h2>
        <button type="button" className="main-button" onClick={start}>
          {appWords.newcomer.showMeRound}
        </button>
        <form method="dialog">
          <button type="submit">{appWords.close}</button>
        </form>
      </header>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: it is scrolled by keyboard too */}
      <section className="help-pages" aria-label={helpWords.pages} tabIndex={0}>
        <div>
          <h3>{helpWords.tradeWords}</h3>
          <dl className="help-words">
            {Object.entries(tradeWords).map(([key, { name, meaning }]) => (
              <div key={key}>
                <dt>{name}</dt>
                <dd>{meaning}</dd>
              </div>
            ))}
          </dl>
        </div>
        <div>
          <h3>{helpWords.keys}</h3>
          <dl className="help-keys">
            {helpKeys[page].map(([key, does]) => (
              <div key={key}>
                <dt>
                  <kbd>{key}</kbd>
                </dt>
                <dd>{does}</dd>
              </div>
            ))}
          </dl>
          <p className="soft">{helpWords.where}</p>
        </div>
      </section>
    </dialog>
  );
});
