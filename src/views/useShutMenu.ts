import type { RefObject } from 'react';
import { useEffect } from 'react';

/**
 * While a menu is open: a press or a focus outside `area` shuts it, and so does Escape; then `shut` is told
 * so, that it may give the focus back to the menu's button.
 */
export function useShutMenu(
  area: RefObject<HTMLElement | null>,
  isOpen: boolean,
  shut: (byKey: boolean) => void,
): void {
  useEffect(() => {
    if (!isOpen) return;
    const outside = ({ target }: Event) => {
      if (!(target instanceof Node && area.current?.contains(target))) shut(false);
    };
    const onKey = ({ key }: KeyboardEvent) => {
      if (key === 'Escape') shut(true);
    };
    const listening = new AbortController();
    const { signal } = listening;
    document.addEventListener('pointerdown', outside, { signal });
    document.addEventListener('focusin', outside, { signal });
    document.addEventListener('keydown', onKey, { signal });
    return () => listening.abort();
  }, [area, isOpen, shut]);
}
