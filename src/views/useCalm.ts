import { startTransition, useEffect, useRef, useState } from 'react';

/** A little more than the time of a frame, ms. */
const frame = 20;

/**
 * `value`; but while it is `hurried`, no newer one until the last has stood for `pause` ms. For figures that
 * are read rather than watched, which need not be drawn anew for every shape of a drag. The last always comes.
 */
export function useCalm<T>(value: T, hurried: boolean, pause = 150): T {
  const [shown, setShown] = useState(value);
  const since = useRef(Number.NEGATIVE_INFINITY);
  const isNew = !Object.is(value, shown);
  if (isNew && !hurried) setShown(() => value);
  useEffect(() => {
    if (!isNew) return;
    const show = () => {
      since.current = performance.now();
      startTransition(() => setShown(() => value));
    };
    // not in the frame that shows the new shape, which has enough to do
    const wait = Math.max(frame, since.current + pause - performance.now());
    const timer = setTimeout(show, wait);
    return () => clearTimeout(timer);
  }, [value, isNew, pause]);
  return hurried ? shown : value;
}
