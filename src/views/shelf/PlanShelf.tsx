import { useDeferredValue, useEffect, useRef, useState } from 'react';
import { shelfWords } from '#words/shelf.ts';
import { Sentence } from '../../form/Sentence.tsx';
import type { Card, Removed, ShelfDb } from '../../keep/shelf/records.ts';
import { useStudio } from '../../keep/useStudio.ts';
import { PlanCard } from './PlanCard.tsx';

interface Props {
  readonly db: ShelfDb;
  readonly cards: readonly Card[];
  readonly sought: string;
  readonly onRemoved: (removed: Removed) => void;
}

/** So many cards are laid out at first, and so many more whenever the end comes into sight. */
const portion = 60;

/** The plans whose name or notes have all the words that are sought. */
export function PlanShelf({ db, cards, sought, onRemoved }: Props) {
  const present = useStudio(({ history }) => history.id);
  const words = useDeferredValue(sought).toLocaleLowerCase().split(/\s+/).filter(Boolean);
  const found = cards.filter(({ name, notes }) => {
    const text = `${name}\n${notes}`.toLocaleLowerCase();
    return words.every((word) => text.includes(word));
  });
  const [laid, setLaid] = useState(portion);
  const end = useRef<HTMLLIElement>(null);
  const isMore = found.length > laid;
  // biome-ignore lint/correctness/useExhaustiveDependencies: after each portion the end is watched anew
  useEffect(() => {
    const mark = end.current;
    if (!mark || !isMore) return;
    const watcher = new IntersectionObserver(
      ([entry]) => entry?.isIntersecting && setLaid((now) => now + portion),
      { rootMargin: '600px' },
    );
    watcher.observe(mark);
    return () => watcher.disconnect();
  }, [isMore, laid]);
  const count = (
    <span className="soft shelf-count" role="status">
      {words.length > 0 ? shelfWords.someOf(found.length, cards.length) : cards.length}
    </span>
  );
  return (
    <section aria-labelledby="your-plans">
      <h2 id="your-plans">
        <Sentence text={shelfWords.yourPlans} places={{ count }} />
      </h2>
      {cards.length === 0 && <p className="shelf-empty">{shelfWords.none}</p>}
      {cards.length > 0 && found.length === 0 && (
        <p className="shelf-empty">{shelfWords.noneFound}</p>
      )}
      <ul className="shelf-cards">
        {found.slice(0, laid).map((card) => (
          <PlanCard
            key={card.id}
            db={db}
            card={card}
            isPresent={card.id === present}
            onRemoved={onRemoved}
          />
        ))}
        {isMore && <li ref={end} aria-hidden="true" />}
      </ul>
    </section>
  );
}
