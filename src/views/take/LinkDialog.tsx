import { useEffect, useId, useRef, useState } from 'react';
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
      setTold('Copied: paste it wherever you like.');
    } catch {
      field.current?.select();
      setTold('This browser does not let it be copied from here: copy it from the box yourself.');
    }
  };
  useEffect(() => {
    dialog.current?.showModal();
    field.current?.select();
  }, []);
  return (
    <dialog ref={dialog} className="ask" aria-labelledby={id} onClose={onClose}>
      <h2 id={id}>A link with this plan in it</h2>
      <p>
        The plan is in the link itself, all of it, and goes nowhere but where you send the link.
        Whoever opens it gets the plan as it is now.
      </p>
      <textarea ref={field} className="link-field" aria-label="The link" readOnly value={address} />
      <p role="status" className="soft link-told">
        {told}
      </p>
      <p className="ask-choices">
        <button type="button" className="main-button" onClick={copy}>
          Copy the link
        </button>
        <button type="button" onClick={() => dialog.current?.close()}>
          Close
        </button>
      </p>
    </dialog>
  );
}
