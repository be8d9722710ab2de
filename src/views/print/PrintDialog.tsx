import { useEffect, useId, useRef, useState } from 'react';
import type { Paper } from '../../export/pdf/page/paper.ts';
import { papers, paperTitle } from '../../export/pdf/page/paper.ts';
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

const kindTitle: Readonly<Record<PrintKind, string>> = {
  sheet: 'Sheet to weave from',
  gauges: 'Full-size gauges',
};

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
        <h2 id={title}>Print {basket.plan.name}</h2>
        <button type="button" onClick={() => dialog.current?.close()}>
          Close
        </button>
      </header>
      <div className="print-tools">
        <fieldset className="print-kinds">
          <legend className="unseen">What to look at</legend>
          {printKinds.map((one) => (
            <label key={one}>
              <input
                type="radio"
                name="print-kind"
                checked={kind === one}
                onChange={() => setKind(one)}
              />
              {kindTitle[one]}
            </label>
          ))}
        </fieldset>
        <label>
          Paper{' '}
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
        <label>
          Materials for{' '}
          <input
            type="number"
            min={1}
            max={mostBaskets}
            value={baskets}
            onChange={({ target }) => {
              const count = Math.round(target.valueAsNumber);
              if (count >= 1 && count <= mostBaskets) setBaskets(count);
            }}
          />{' '}
          {baskets === 1 ? 'basket' : 'baskets'}
        </label>
        <span className="print-saves">
          {printKinds.map((one) => (
            <button key={one} type="button" className="main-button" onClick={() => save(one)}>
              {one === 'sheet' ? 'Save sheet (PDF)' : 'Save gauges (PDF)'}
            </button>
          ))}
        </span>
      </div>
      <p className="print-doing" role="status">
        {doing ?? `${pages.length} pages, ${paperTitle[paper]}.`}
        {kind === 'gauges' && !doing ? ' Print at 100 % and check the bars.' : ''}
      </p>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: pages are scrolled by keyboard too */}
      <section className="print-pages" aria-label="Pages" tabIndex={0}>
        {pages.map((page, at) => (
          <PagePicture
            // biome-ignore lint/suspicious/noArrayIndexKey: pages are told apart by their number
            key={at}
            page={page}
            title={`${kindTitle[kind]}, page ${at + 1} of ${pages.length}`}
          />
        ))}
      </section>
    </dialog>
  );
}
