import { startTransition, useEffect, useRef, useState } from 'react';

/**
 * `value`, but no newer one until the last has stood for `pause` ms: for figures that are read rather than
 * watched, which need not be drawn anew for every shape of a drag. The last value always comes.
 */
export function useCalm<T>(value: T, pause = 150): T {
  const [shown, setShown] = useState(value);
  const since = useRef(Number.NEGATIVE_INFINITY);
  useEffect(() => {
    if (Object.is(value, shown)) return;
    const show = () => {
      since.current = performance.now();
      startTransition(() => setShown(() => value));
    };
    const wait = since.current + pause - performance.now();
    if (wait <= 0) {
      show();
      return;
    }
    const timer = setTimeout(show, wait);
    return () => clearTimeout(timer);
  }, [value, shown, pause]);
  return shown;
}
