import type { RefObject } from 'react';
import { useLayoutEffect, useState } from 'react';

/** How far down an element reaches in its offset parent, CSS pixels; it follows the element. */
export function useHeight(element: RefObject<HTMLElement | null>): number {
  const [height, setHeight] = useState(0);
  useLayoutEffect(() => {
    const watched = element.current;
    if (!watched) return;
    const measure = () => setHeight(watched.offsetTop + watched.offsetHeight);
    const observer = new ResizeObserver(measure);
    observer.observe(watched);
    measure();
    return () => observer.disconnect();
  }, [element]);
  return height;
}
