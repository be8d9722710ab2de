import type { RefObject } from 'react';
import { appWords } from '#words/app.ts';
import { helpWords } from '#words/help.ts';
import { stageWords } from '#words/stage.ts';
import { tradeWords } from '#words/trade.ts';
import { stageViews } from './stageViews.ts';

interface Props {
  readonly dialog: RefObject<HTMLDialogElement | null>;
  readonly onTour: () => void;
}

const keys: readonly (readonly [keys: string, does: string])[] = [
  ...stageViews.map(({ view }, index) => [`${index + 1}`, stageWords.viewNames[view]] as const),
  [helpWords.key.undo, appWords.undo],
  [helpWords.key.redo, appWords.redo],
  [helpWords.key.arrows, helpWords.does.arrows],
  [helpWords.key.add, helpWords.does.add],
  [helpWords.key.delete, helpWords.does.delete],
  [helpWords.key.help, helpWords.does.help],
  [helpWords.key.escape, helpWords.does.escape],
];

/** Tour, words of the trade and keys, in a dialog that its opener shows. */
export function Help({ dialog, onTour }: Props) {
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
            {keys.map(([key, does]) => (
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
}
