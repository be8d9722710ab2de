import type { ReactNode } from 'react';
import { useId, useState } from 'react';
import type { TradeWord } from '../form/tradeWords.ts';
import { WordHelp } from '../form/WordHelp.tsx';

export interface SectionProps {
  readonly title: string;
  /** What is inside, in few words; shown while the section is shut too. */
  readonly gist: string;
  /** A word of the trade in the title, explained beside it. */
  readonly word?: TradeWord;
  readonly startsOpen?: boolean;
  readonly children: ReactNode;
}

/** A part of the panel under a heading that opens and shuts it, by hand or by keyboard. */
export function Section({ title, gist, word, startsOpen = false, children }: SectionProps) {
  const id = useId();
  const [isOpen, setOpen] = useState(startsOpen);
  return (
    <section className="panel-section">
      <div className="panel-heading">
        <h3>
          <button
            type="button"
            aria-expanded={isOpen}
            aria-controls={id}
            className="panel-toggle"
            onClick={() => setOpen((before) => !before)}
          >
            <svg viewBox="0 0 10 10" aria-hidden="true">
              <path d={isOpen ? 'M1 3l4 4 4-4' : 'M3 1l4 4-4 4'} />
            </svg>
            <span>{title}</span>
            <small>{gist}</small>
          </button>
        </h3>
        {word && <WordHelp word={word} />}
      </div>
      <div id={id} hidden={!isOpen} className="panel-body">
        {isOpen && children}
      </div>
    </section>
  );
}
