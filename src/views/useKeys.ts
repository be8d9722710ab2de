import { useEffect } from 'react';
import { presentStudio } from '../keep/useStudio.ts';
import { stageViews } from './stageViews.ts';

/** Keys that work wherever nothing is being typed: views, undo and redo. */
export function useKeys(): void {
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
  const letter = key.toLowerCase();
  const { undo, redo } = presentStudio();
  if (letter === 'z') return shiftKey ? redo : undo;
  return letter === 'y' ? redo : undefined;
}

function plainKey({ key }: KeyboardEvent): (() => void) | undefined {
  const chosen = stageViews[Number(key) - 1];
  return chosen && (() => presentStudio().look(chosen.view));
}

const typed =
  'input:not([type=range], [type=checkbox], [type=radio], [type=button]), textarea, select';

/** Whether keys that come from `target` are text or a choice of its own. */
export function isTyping(target: EventTarget | null): boolean {
  return target instanceof HTMLElement && (target.isContentEditable || target.matches(typed));
}
