/** Whether something is held by a pointer, anywhere on the page, and when it is let go. */
import { useEffect } from 'react';

const held = new Set<number>();

/** Keeps count of the pointers that are down while the component is on the page. */
export function useHeldPointers(): void {
  useEffect(() => {
    const down = ({ pointerId }: PointerEvent) => held.add(pointerId);
    const up = ({ pointerId }: PointerEvent) => held.delete(pointerId);
    // of a pointer let go outside the window nothing else is heard
    const move = ({ pointerId, buttons }: PointerEvent) => buttons === 0 && held.delete(pointerId);
    // before any part of the page keeps them to itself
    const early = { capture: true };
    globalThis.addEventListener('pointerdown', down, early);
    globalThis.addEventListener('pointerup', up, early);
    globalThis.addEventListener('pointercancel', up, early);
    globalThis.addEventListener('pointermove', move, early);
    return () => {
      globalThis.removeEventListener('pointerdown', down, early);
      globalThis.removeEventListener('pointerup', up, early);
      globalThis.removeEventListener('pointercancel', up, early);
      globalThis.removeEventListener('pointermove', move, early);
      held.clear();
    };
  }, []);
}

/** Does `act` now, or once no pointer is down any more; gives what calls it off. */
export function whenHandsOff(act: () => void): () => void {
  if (held.size === 0) {
    act();
    return () => {};
  }
  const callOff = () => {
    globalThis.removeEventListener('pointerup', check);
    globalThis.removeEventListener('pointercancel', check);
  };
  const check = () => {
    if (held.size > 0) return;
    callOff();
    act();
  };
  globalThis.addEventListener('pointerup', check);
  globalThis.addEventListener('pointercancel', check);
  return callOff;
}
