import type { RefObject } from 'react';
import { stageViews } from './stageViews.ts';

interface Props {
  readonly dialog: RefObject<HTMLDialogElement | null>;
}

const keys: readonly (readonly [keys: string, does: string])[] = [
  ...stageViews.map(({ title }, index) => [`${index + 1}`, `${title} view`] as const),
  ['Ctrl or ⌘ Z', 'Undo'],
  ['Ctrl or ⌘ Shift Z, or Y', 'Redo'],
  ['Arrows', 'On a point of the girth line: move it'],
  ['A', 'On a point: add the next one'],
  ['Delete', 'On a point: take it away'],
  ['?', 'This list'],
  ['Esc', 'Close this list'],
];

/** The list of keys, in a dialog that its opener shows. */
export function KeyList({ dialog }: Props) {
  return (
    <dialog ref={dialog} className="key-list" aria-labelledby="key-list-title">
      <h2 id="key-list-title">Keys</h2>
      <dl>
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
      <form method="dialog">
        <button type="submit" className="main-button">
          Close
        </button>
      </form>
    </dialog>
  );
}
