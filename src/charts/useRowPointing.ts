import type { FocusEvent, KeyboardEvent, PointerEvent } from 'react';
import { useEffect, useRef, useState } from 'react';

/**
 * Pointing at the rows of a table with `rows` lines marked `data-row`: hover, focus and the arrow
 * keys. A row pointed at elsewhere is scrolled into sight. `active` is the row the keyboard is at.
 */
export function useRowPointing(
  row: number | null,
  onRow: (row: number | null) => void,
  rows: number,
) {
  const scroller = useRef<HTMLDivElement>(null);
  const isHere = useRef(false);
  const [focused, setFocused] = useState(1);
  const active = Math.min(focused, Math.max(1, rows));

  useEffect(() => {
    if (row !== null && !isHere.current) scrollTo(scroller.current, row);
  }, [row]);

  const point = (to: number | null) => {
    if (to !== row) onRow(to);
  };

  return {
    scroller,
    active,
    listeners: {
      onPointerOver(event: PointerEvent) {
        isHere.current = true;
        const at = rowOf(event.target);
        if (at !== null) point(at);
      },
      onPointerLeave() {
        isHere.current = false;
        point(null);
      },
      onClick(event: { readonly target: EventTarget }) {
        const line = lineOf(event.target);
        if (line && event.target !== line && !isControl(event.target)) line.focus();
      },
      onFocus(event: FocusEvent) {
        const at = rowOf(event.target);
        if (at === null) return;
        setFocused(at);
        point(at);
      },
      onKeyDown(event: KeyboardEvent) {
        if (event.key !== 'ArrowUp' && event.key !== 'ArrowDown') return;
        if (isControl(event.target)) return;
        const line = lineOf(event.target);
        const next =
          event.key === 'ArrowUp' ? line?.previousElementSibling : line?.nextElementSibling;
        if (!(next instanceof HTMLElement)) return;
        event.preventDefault();
        next.focus({ preventScroll: true });
        scrollTo(scroller.current, rowOf(next) ?? 0);
      },
    },
  };
}

function lineOf(target: EventTarget): HTMLElement | null {
  return target instanceof Element ? target.closest<HTMLElement>('tr[data-row]') : null;
}

function rowOf(target: EventTarget): number | null {
  const row = lineOf(target)?.dataset.row;
  return row === undefined ? null : Number(row);
}

function isControl(target: EventTarget): boolean {
  return target instanceof Element && target.closest('input,button') !== null;
}

/** Moves only the table's own scroll, never the page's, and only as far as needed. */
function scrollTo(scroller: HTMLElement | null, row: number): void {
  const line = scroller?.querySelector<HTMLElement>(`tr[data-row="${row}"]`);
  if (!scroller || !line) return;
  const head = scroller.querySelector('thead')?.clientHeight ?? 0;
  const top = line.offsetTop - head;
  const bottom = line.offsetTop + line.offsetHeight - scroller.clientHeight;
  if (scroller.scrollTop > top) scroller.scrollTop = top;
  else if (scroller.scrollTop < bottom) scroller.scrollTop = bottom;
}
