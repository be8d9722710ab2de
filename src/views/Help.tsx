import type { RefObject } from 'react';
import { tradeWords } from '../form/tradeWords.ts';
import { stageViews } from './stageViews.ts';

interface Props {
  readonly dialog: RefObject<HTMLDialogElement | null>;
  readonly onTour: () => void;
}

const keys: readonly (readonly [keys: string, does: string])[] = [
  ...stageViews.map(({ title }, index) => [`${index + 1}`, `${title} view`] as const),
  ['Ctrl or ⌘ Z', 'Undo'],
  ['Ctrl or ⌘ Y', 'Redo'],
  ['Arrows', 'On a point of the girth line: move it'],
  ['A', 'On a point: add the next one'],
  ['Delete', 'On a point: take it away'],
  ['?', 'This page'],
  ['Esc', 'Close what is open'],
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
        <h2 id="help-title">Help</h2>
        <button type="button" className="main-button" onClick={start}>
          Show me round
        </button>
        <form method="dialog">
          <button type="submit">Close</button>
        </form>
      </header>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: it is scrolled by keyboard too */}
      <section className="help-pages" aria-label="Words and keys" tabIndex={0}>
        <div>
          <h3>Words of the trade</h3>
          <dl className="help-words">
            {Object.entries(tradeWords).map(([word, meaning]) => (
              <div key={word}>
                <dt>{word}</dt>
                <dd>{meaning}</dd>
              </div>
            ))}
          </dl>
        </div>
        <div>
          <h3>Keys</h3>
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
          <p className="soft">They work wherever you are not typing.</p>
        </div>
      </section>
    </dialog>
  );
}
