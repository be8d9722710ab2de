import { useEffect, useState } from 'react';

/** Where something lies in the window, CSS px. */
export interface Place {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** The first of `selectors` that is to be seen, scrolled into sight, and its place as it moves; else null. */
export function usePlaceOf(selectors: readonly string[]): Place | null {
  const [place, setPlace] = useState<Place | null>(null);
  useEffect(() => {
    const there = selectors
      .map((selector) => document.querySelector(selector))
      .find((one) => one?.checkVisibility());
    if (!there) return setPlace(null);
    const note = () => {
      const { left, top, width, height } = there.getBoundingClientRect();
      setPlace({ left, top, width, height });
    };
    const isStill = matchMedia('(prefers-reduced-motion: reduce)').matches;
    there.scrollIntoView({ block: 'nearest', behavior: isStill ? 'instant' : 'smooth' });
    note();
    const sized = new ResizeObserver(note);
    sized.observe(there);
    sized.observe(document.documentElement);
    document.addEventListener('scroll', note, { capture: true, passive: true });
    return () => {
      sized.disconnect();
      document.removeEventListener('scroll', note, { capture: true });
    };
  }, [selectors]);
  return place;
}
