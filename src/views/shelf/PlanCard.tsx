import { useRef, useState } from 'react';
import { appWords } from '#words/app.ts';
import { shelfWords } from '#words/shelf.ts';
import { tellChanged } from '../../keep/keepHere.ts';
import { openKept } from '../../keep/openKept.ts';
import type { Card, Removed, ShelfDb } from '../../keep/shelf/records.ts';
import { copyPlan, removePlan, renamePlan } from '../../keep/shelf/shelfPlans.ts';
import { presentStudio } from '../../keep/useStudio.ts';
import { orTell } from '../take/orTell.ts';
import { tellOnShelf } from '../take/told.ts';
import { agoText } from './agoText.ts';
import { RenameField } from './RenameField.tsx';
import { ThumbnailPicture } from './ThumbnailPicture.tsx';

interface Props {
  readonly db: ShelfDb;
  readonly card: Card;
  /** True for the plan at hand. */
  readonly isPresent: boolean;
  readonly onRemoved: (removed: Removed) => void;
}

const words = shelfWords.card;

/** A plan on the shelf, and what can be done with it. */
export function PlanCard({ db, card, isPresent, onRemoved }: Props) {
  const { id, name, updated, thumbnail } = card;
  const [isNaming, setNaming] = useState(false);
  const rename = useRef<HTMLButtonElement>(null);
  const open = () =>
    orTell(words.notOpened(name), async () => {
      const problem = await openKept(id);
      if (!problem) globalThis.location.hash = '#plan';
      else tellOnShelf({ done: words.notOpened(name), problems: problem.split('\n') });
    });
  const copy = () =>
    orTell(words.notCopied(name), async () => {
      const made = await copyPlan(db, id);
      if (made) tellChanged(made, 1);
    });
  const remove = () =>
    orTell(words.notDeleted(name), async () => {
      const removed = await removePlan(db, id);
      if (!removed) return;
      tellChanged(id, undefined);
      onRemoved(removed);
    });
  const take = async (typed: string) => {
    setNaming(false);
    setTimeout(() => rename.current?.focus());
    if (!typed || typed === name) return;
    const { plan, change } = presentStudio();
    if (isPresent) change({ ...plan, name: typed }, appWords.namingIt(typed));
    else {
      await orTell(words.notRenamed(name), async () =>
        tellChanged(id, await renamePlan(db, id, typed)),
      );
    }
  };
  return (
    <li className="shelf-card" data-present={isPresent}>
      <button type="button" className="shelf-open" onClick={open} aria-label={words.open(name)}>
        <ThumbnailPicture thumbnail={thumbnail} />
      </button>
      {isNaming ? (
        <RenameField name={name} onDone={take} />
      ) : (
        <p className="shelf-name" title={name}>
          {name}
        </p>
      )}
      <p className="soft shelf-when">{isPresent ? words.openNow : agoText(updated, Date.now())}</p>
      <p className="shelf-actions">
        <button
          ref={rename}
          type="button"
          aria-label={words.renameThis(name)}
          onClick={() => setNaming(true)}
        >
          {words.rename}
        </button>
        <button type="button" aria-label={words.copyThis(name)} onClick={copy}>
          {words.copy}
        </button>
        <a href={`#shelf=${id}`} aria-label={words.versionsOf(name)}>
          {words.versions}
        </a>
        <button type="button" aria-label={words.deleteThis(name)} onClick={remove}>
          {words.delete}
        </button>
      </p>
    </li>
  );
}
