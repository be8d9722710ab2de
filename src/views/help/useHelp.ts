import type { RefObject } from 'react';
import { useCallback, useEffect, useRef } from 'react';
import { isTyping } from '../useKeys.ts';

export interface HelpHere {
  readonly dialog: RefObject<HTMLDialogElement | null>;
  readonly show: () => void;
}

/** The help of a page, and its key ? wherever nothing is being typed and nothing else has to be answered first. */
export function useHelp(): HelpHere {
  const dialog = useRef<HTMLDialogElement>(null);
  const show = useCallback(() => {
    if (!document.querySelector('dialog:modal')) dialog.current?.showModal();
  }, []);
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      const { key, altKey, ctrlKey, metaKey, target } = event;
      if (event.defaultPrevented || key !== '?' || isTyping(target)) return;
      if (altKey || ctrlKey || metaKey) return;
      event.preventDefault();
      show();
    };
    globalThis.addEventListener('keydown', onKey);
    return () => globalThis.removeEventListener('keydown', onKey);
  }, [show]);
  return { dialog, show };
}
