import { useEffect } from 'react';
import { presentComparison, presentSide } from '../../keep/compareHere.ts';
import { stageViews } from '../stageViews.ts';
import { isTyping } from '../useKeys.ts';

/** Keys while two plans are compared: views, undo and redo of the edited plan, editing the other. */
export function useCompareKeys(): void {
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (event.defaultPrevented || event.altKey || isTyping(event.target)) return;
      const act = event.ctrlKey || event.metaKey ? undoKey(event) : plainKey(event);
      if (!act) return;
      event.preventDefault();
      act();
    };
    globalThis.addEventListener('keydown', onKey);
    return () => globalThis.removeEventListener('keydown', onKey);
  }, []);
}

function undoKey({ key, shiftKey }: KeyboardEvent): (() => void) | undefined {
  const { undo, redo } = presentSide(presentComparison().edited);
  const letter = key.toLowerCase();
  if (letter === 'z') return shiftKey ? redo : undo;
  return letter === 'y' ? redo : undefined;
}

function plainKey({ key }: KeyboardEvent): (() => void) | undefined {
  const { edited, edit, look } = presentComparison();
  if (key.toLowerCase() === 'e') return () => edit(edited === 'a' ? 'b' : 'a');
  const chosen = stageViews[Number(key) - 1];
  return chosen && (() => look(chosen.view));
}
