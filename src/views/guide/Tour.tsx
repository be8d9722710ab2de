import { useEffect, useLayoutEffect, useRef, useState } from 'react';
import { tourWords } from '#words/tour.ts';
import { besidePlace } from './besidePlace.ts';
import { tourSteps } from './tourSteps.ts';
import { usePlaceOf } from './usePlaceOf.ts';

/** Round the place shown, px. */
const margin = 3;

/**
 * The tour: a card beside each place in turn. The page stays as it is and can be used meanwhile; Escape
 * ends the tour, and the focus goes back to where it was.
 */
export function Tour({ onEnd }: { readonly onEnd: () => void }) {
  const [at, setAt] = useState(0);
  const card = useRef<HTMLDivElement>(null);
  const from = useRef<Element | null>(null);
  const step = tourSteps[at] ?? tourSteps[0];
  const place = usePlaceOf(step?.places ?? nowhere);
  const isLast = at === tourSteps.length - 1;

  useEffect(() => {
    from.current = document.activeElement;
    return () => goBack(from.current);
  }, []);
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (event.key !== 'Escape' || event.defaultPrevented) return;
      if (document.querySelector('dialog:modal, :popover-open')) return;
      event.preventDefault();
      onEnd();
    };
    document.addEventListener('keydown', onKey);
    return () => document.removeEventListener('keydown', onKey);
  }, [onEnd]);
  // a new card for each step, so that a screen reader reads it
  // biome-ignore lint/correctness/useExhaustiveDependencies: each step has its own card
  useEffect(() => card.current?.focus({ preventScroll: true }), [at]);
  useLayoutEffect(() => {
    const { current } = card;
    if (!current) return;
    const size = { width: current.offsetWidth, height: current.offsetHeight };
    const { left, top } = besidePlace(size, place, { width: innerWidth, height: innerHeight });
    current.style.left = `${left}px`;
    current.style.top = `${top}px`;
  });
  if (!step) return null;
  return (
    <>
      {place && (
        <div
          className="tour-ring"
          style={{
            left: place.left + margin,
            top: place.top + margin,
            width: place.width - 2 * margin,
            height: place.height - 2 * margin,
          }}
        />
      )}
      <div
        key={at}
        ref={card}
        className="tour-card"
        role="dialog"
        aria-labelledby="tour-title"
        aria-describedby="tour-text"
        tabIndex={-1}
      >
        <p className="tour-count">{tourWords.step(at + 1, tourSteps.length)}</p>
        <h2 id="tour-title">{step.title}</h2>
        <p id="tour-text">{step.text}</p>
        <div className="tour-buttons">
          {at > 0 && (
            <button type="button" onClick={() => setAt(at - 1)}>
              {tourWords.back}
            </button>
          )}
          <button
            type="button"
            className="main-button"
            onClick={() => (isLast ? onEnd() : setAt(at + 1))}
          >
            {isLast ? tourWords.done : tourWords.next}
          </button>
          {!isLast && (
            <button type="button" onClick={onEnd}>
              {tourWords.end}
            </button>
          )}
        </div>
      </div>
    </>
  );
}

const nowhere: readonly string[] = [];

/** The focus returns where it was, or where that is gone to what starts the tour again. */
function goBack(before: Element | null): void {
  const isThere = before?.isConnected && before !== document.body;
  const to = isThere ? before : document.querySelector('[data-tour=help]');
  if (to instanceof HTMLElement || to instanceof SVGElement) to.focus({ preventScroll: true });
}
