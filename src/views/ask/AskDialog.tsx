import { useEffect, useId, useRef, useState } from 'react';
import type { OpenQuestion } from './asking.ts';
import { leave, useOpenQuestion } from './asking.ts';
import './ask.css';

/** Shows the question that is open and hands on its answer. */
export function AskDialog() {
  const open = useOpenQuestion();
  return open && <Asked key={open.number} open={open} />;
}

function Asked({ open }: { readonly open: OpenQuestion }) {
  const { title, text, choices, forAll } = open.question;
  const dialog = useRef<HTMLDialogElement>(null);
  const [isForAll, setForAll] = useState(false);
  const id = useId();
  useEffect(() => dialog.current?.showModal(), []);
  return (
    <dialog
      ref={dialog}
      className="ask"
      aria-labelledby={id}
      onCancel={(event) => {
        event.preventDefault();
        leave(open);
      }}
    >
      <h2 id={id}>{title}</h2>
      <p>{text}</p>
      {forAll && (
        <label className="ask-all">
          <input
            type="checkbox"
            checked={isForAll}
            onChange={({ target }) => setForAll(target.checked)}
          />
          {forAll}
        </label>
      )}
      <p className="ask-choices">
        {choices.map(({ value, label }, at) => (
          <button
            key={value}
            type="button"
            className={at === 0 ? 'main-button' : undefined}
            onClick={() => open.answer({ value, isForAll })}
          >
            {label}
          </button>
        ))}
      </p>
    </dialog>
  );
}
