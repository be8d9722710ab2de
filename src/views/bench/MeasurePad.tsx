import type { KeyboardEvent } from 'react';
import { useEffect, useRef } from 'react';
import { benchWords } from '#words/bench.ts';
import { benchPadWords as words } from '#words/benchPad.ts';
import { unitWords } from '#words/units.ts';
import { withLengths } from '../../plan/lengthText.ts';
import { formatLength } from '../../plan/units.ts';
import type { BenchWork } from './benchWork.ts';
import { targetTape } from './benchWork.ts';
import type { Measure } from './measureEntry.ts';
import { expectedOf, measures } from './measureEntry.ts';
import { PadKeys } from './PadKeys.tsx';
import { useMeasurePad } from './useMeasurePad.ts';

interface Props {
  readonly work: BenchWork;
  readonly onDone: () => void;
}

/** Where the tape's reading goes: any row's girth, its length and width, or the height so far. */
export function MeasurePad({ work, onDone }: Props) {
  const { unit } = work.plan.display;
  const dialog = useRef<HTMLDialogElement>(null);
  const pad = useMeasurePad(work, onDone);
  const { what, row, question, had } = pad;
  const figure = useRef<HTMLInputElement>(null);
  useEffect(() => {
    dialog.current?.showModal();
    // it takes a keyboard's figures at once; a phone shows no keyboard of its own for it
    figure.current?.focus();
  }, []);
  return (
    <dialog
      ref={dialog}
      className="pad"
      aria-label={words.title}
      onClose={onDone}
      onKeyDown={(event) => toFigure(event, figure.current)}
    >
      <form
        onSubmit={(event) => {
          event.preventDefault();
          pad.keep();
        }}
      >
        <div className="pad-what">
          {measures.map((one) => (
            <button
              key={one}
              type="button"
              aria-pressed={what === one}
              onClick={() => pad.measure(one)}
            >
              {words.tabs[one]}
            </button>
          ))}
        </div>
        <div className="pad-row">
          <button type="button" aria-label={words.below} onClick={() => pad.goTo(row - 1)}>
            −
          </button>
          <p>
            <strong>{benchWords.row(row)}</strong>
            <small>{hint(work, what, row)}</small>
          </p>
          <button type="button" aria-label={words.above} onClick={() => pad.goTo(row + 1)}>
            +
          </button>
        </div>
        <label className="pad-value">
          <span className="unseen">{words.value[what](row)}</span>
          <input
            ref={figure}
            value={pad.text}
            inputMode="none"
            autoComplete="off"
            placeholder={had === undefined ? '' : formatLength(had, unit, { withUnit: false })}
            aria-invalid={question !== null}
            aria-describedby="pad-question"
            onChange={({ target }) => pad.put(target.value)}
          />
          <span>{unitWords.length[unit]}</span>
        </label>
        <p className="pad-question" id="pad-question" role="status">
          {question && withLengths(question.text, unit)}
        </p>
        <PadKeys unit={unit} onKey={pad.key} onBack={pad.back} />
        <div className="pad-end">
          {had !== undefined && pad.text === '' ? (
            <button type="button" onClick={pad.forget}>
              {words.forget}
            </button>
          ) : (
            <button type="button" onClick={onDone}>
              {words.leave}
            </button>
          )}
          <button type="submit" className="main-button">
            {question && !question.isImpossible ? words.keepAllTheSame : words.keep}
          </button>
        </div>
      </form>
    </dialog>
  );
}

/** Whatever has the focus, what belongs to a figure is typed into it: the key goes where the focus is put now. */
function toFigure(event: KeyboardEvent, figure: HTMLInputElement | null): void {
  const { key, ctrlKey, altKey, metaKey, target } = event;
  if (!figure || target === figure || ctrlKey || altKey || metaKey) return;
  if (!/^([\p{Nd}.,/]|Backspace)$/u.test(key)) return;
  figure.focus();
  figure.setSelectionRange(figure.value.length, figure.value.length);
}

/** What to measure, or what it should come to. */
function hint(work: BenchWork, what: Measure, row: number): string {
  const { unit } = work.plan.display;
  if (what === 'height') return words.hints.height;
  if (what === 'girth') return words.hints.girth(formatLength(targetTape(work, row), unit));
  return words.hints.across(formatLength(expectedOf(work, what, row), unit));
}
