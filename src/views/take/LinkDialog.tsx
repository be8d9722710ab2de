import { useEffect, useId, useRef, useState } from 'react';
import { appWords } from '#words/app.ts';
import { linkWords } from '#words/link.ts';
import { planFragment } from '../../export/planLink.ts';
import { presentStudio } from '../../keep/useStudio.ts';
import '../ask/ask.css';

interface Props {
  readonly onClose: () => void;
}

/** A link that carries the plan: copied, and to be seen where the browser does not let it be copied. */
export function LinkDialog({ onClose }: Props) {
  const dialog = useRef<HTMLDialogElement>(null);
  const field = useRef<HTMLTextAreaElement>(null);
  const id = useId();
  const [told, setTold] = useState('');
  const [address] = useState(() => {
    const { origin, pathname, search } = globalThis.location;
    const page = origin === 'null' ? globalThis.location.href.replace(/#.*/, '') : origin;
    return `${page === origin ? origin + pathname + search : page}${planFragment(presentStudio().plan)}`;
  });
  const copy = async () => {
    try {
      await navigator.clipboard.writeText(address);
      setTold(linkWords.copied);
    } catch {
      field.current?.select();
      setTold(linkWords.notCopied);
    }
  };
  useEffect(() => {
    dialog.current?.showModal();
    field.current?.select();
  }, []);
  return (
    <dialog ref={dialog} className="ask" aria-labelledby={id} onClose={onClose}>
      <h2 id={id}>{linkWords.title}</h2>
      <p>{linkWords.text}</p>
      <textarea
        ref={field}
        className="link-field"
        aria-label={linkWords.link}
        readOnly
        value={address}
      />
      <p role="status" className="soft link-told">
        {told}
      </p>
      <p className="ask-choices">
        <button type="button" className="main-button" onClick={copy}>
          {linkWords.copy}
        </button>
        <button type="button" onClick={() => dialog.current?.close()}>
          {appWords.close}
        </button>
      </p>
    </dialog>
  );
}
