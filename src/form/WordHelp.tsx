import type { ToggleEvent } from 'react';
import { useEffect, useId, useRef, useState } from 'react';
import { fieldWords } from '#words/fields.ts';
import { tradeWords } from '#words/trade.ts';
import type { TradeWord } from './tradeWords.ts';
import './wordHelp.css';

/** From the window's edge, and from the button, px. */
const room = 8;

/**
 * A small ? that says what a word of the trade means: on a press or a touch in a note beside it, to a
 * screen reader as the button's description. Escape or a press elsewhere closes the note.
 */
export function WordHelp({ word }: { readonly word: TradeWord }) {
  const { name, meaning } = tradeWords[word];
  const id = useId();
  const button = useRef<HTMLButtonElement>(null);
  const note = useRef<HTMLDivElement>(null);
  const [isOpen, setOpen] = useState(false);
  useEffect(() => {
    if (!isOpen) return;
    // it stands still while what it belongs to moves away
    const close = () => note.current?.hidePopover();
    document.addEventListener('scroll', close, { capture: true, once: true });
    return () => document.removeEventListener('scroll', close, { capture: true });
  }, [isOpen]);
  const place = ({ newState }: ToggleEvent) => {
    setOpen(newState === 'open');
    if (newState === 'open') putBeside(note.current, button.current);
  };
  return (
    <>
      <button
        ref={button}
        type="button"
        className="word-help"
        aria-label={fieldWords.whatIs(name)}
        aria-describedby={id}
        popoverTarget={id}
      >
        ?
      </button>
      <div ref={note} id={id} popover="auto" className="word-note" onToggle={place}>
        <strong>{name}</strong> {meaning}
      </div>
    </>
  );
}

/** Puts the note under the button, or over it where there is no room, and inside the window. */
function putBeside(note: HTMLElement | null, button: HTMLElement | null): void {
  if (!note || !button) return;
  const at = button.getBoundingClientRect();
  const { width, height } = note.getBoundingClientRect();
  const isUnder = at.bottom + room + height < innerHeight - room;
  const top = isUnder ? at.bottom + room : Math.max(room, at.top - room - height);
  const left = Math.max(room, Math.min(at.left - 20, innerWidth - width - room));
  note.style.top = `${top}px`;
  note.style.left = `${left}px`;
}
