import { useEffect, useId, useRef, useState } from 'react';
import { appWords } from '#words/app.ts';
import { printWords } from '#words/print.ts';
import type { Paper } from '../../export/pdf/page/paper.ts';
import { papers, paperTitle } from '../../export/pdf/page/paper.ts';
import { CountField } from '../../form/CountField.tsx';
import type { Basket } from '../../model/basket.ts';
import { PagePicture } from './PagePicture.tsx';
import { paperHere } from './paperHere.ts';
import type { PrintKind } from './printing.ts';
import { printKinds } from './printing.ts';
import { usePages } from './usePages.ts';
import './print.css';

interface Props {
  readonly basket: Basket;
  readonly onClose: () => void;
}

const mostBaskets = 200;

/** A look at the pages before they are printed, and both PDFs to keep. */
export function PrintDialog({ basket, onClose }: Props) {
  const dialog = useRef<HTMLDialogElement>(null);
  const title = useId();
  const [kind, setKind] = useState<PrintKind>('sheet');
  const [paper, setPaper] = useState<Paper>(paperHere);
  const [baskets, setBaskets] = useState(1);
  const { pages, doing, save } = usePages(basket, kind, paper, baskets);
  useEffect(() => dialog.current?.showModal(), []);
  return (
    <dialog ref={dialog} className="print-dialog" aria-labelledby={title} onClose={onClose}>
      <header className="print-head">
        <h2 id={title}>{printWords.title(basket.plan.name)}</h2>
        <button type="button" onClick={() => dialog.current?.close()}>
          {appWords.close}
        </button>
      </header>
      <div className="print-tools">
        <fieldset className="print-kinds">
          <legend className="unseen">{printWords.choose}</legend>
          {printKinds.map((one) => (
            <label key={one}>
              <input
                type="radio"
                name="print-kind"
                checked={kind === one}
                onChange={() => setKind(one)}
              />
              {printWords.kinds[one]}
            </label>
          ))}
        </fieldset>
        <label>
          {printWords.paper}{' '}
          <select
            value={paper}
            onChange={({ target }) => setPaper(papers.find((one) => one === target.value) ?? paper)}
          >
            {papers.map((one) => (
              <option key={one} value={one}>
                {paperTitle[one]}
              </option>
            ))}
          </select>
        </label>
        <CountField
          label={printWords.baskets}
          count={baskets}
          least={1}
          most={mostBaskets}
          onCommit={(count) => {
            setBaskets(count);
            return null;
          }}
        />
        <span className="print-saves">
          {printKinds.map((one) => (
            <button key={one} type="button" className="main-button" onClick={() => save(one)}>
              {printWords.save[one]}
            </button>
          ))}
        </span>
      </div>
      <p className="print-doing" role="status">
        {doing ?? printWords.ready[kind](pages.length, paperTitle[paper])}
      </p>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: pages are scrolled by keyboard too */}
      <section className="print-pages" aria-label={printWords.pages} tabIndex={0}>
        {pages.map((page, at) => (
          <PagePicture
            // biome-ignore lint/suspicious/noArrayIndexKey: pages are told apart by their number
            key={at}
            page={page}
            title={printWords.page(printWords.kinds[kind], at + 1, pages.length)}
          />
        ))}
      </section>
    </dialog>
  );
}
