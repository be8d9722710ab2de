import type { RefObject } from 'react';
import { useEffect, useRef, useState } from 'react';

export interface ChartSize {
  readonly width: number;
  readonly height: number;
}

/** Size of an element in px, kept current; `first` until it has been laid out. */
export function useChartSize(first: ChartSize): [RefObject<HTMLDivElement | null>, ChartSize] {
  const element = useRef<HTMLDivElement>(null);
  const [size, setSize] = useState(first);
  useEffect(() => {
    if (!element.current) return;
    const observer = new ResizeObserver(([entry]) => {
      if (!entry) return;
      const width = Math.round(entry.contentRect.width);
      const height = Math.round(entry.contentRect.height);
      if (width > 0 && height > 0) {
        setSize((old) => (old.width === width && old.height === height ? old : { width, height }));
      }
    });
    observer.observe(element.current);
    return () => observer.disconnect();
  }, []);
  return [element, size];
}
