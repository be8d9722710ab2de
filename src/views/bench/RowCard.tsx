import { useMemo } from 'react';
import { rowWords } from '../../export/pdf/sheet/rowWords.ts';
import { quantities } from '../../model/quantity/quantities.ts';
import { BigLength } from './BigLength.tsx';
import type { BenchWork } from './benchWork.ts';
import { changeOf, targetTape, tellable } from './benchWork.ts';
import { ReplanWaits } from './ReplanWaits.tsx';

/** The row being woven, in figures that are read from the other side of the table. */
export function RowCard({ work }: { readonly work: BenchWork }) {
  const { record, rows, plan, planBasket } = work;
  const { unit } = plan.display;
  const { row } = record;
  const words = useMemo(() => rowWords(planBasket, quantities(planBasket)), [planBasket]);
  if (row > rows) {
    return (
      <section className="row-card row-card-ended" aria-label="Row being woven">
        <p className="row-card-verb">All {rows} rows are woven</p>
        <p className="row-card-words">Measure the rim, then bind it off.</p>
      </section>
    );
  }
  const change = changeOf(work, row);
  const isTold = Math.abs(change) >= tellable;
  return (
    <section className="row-card" aria-label="Row being woven">
      <ReplanWaits work={work} />
      <p className="row-card-row">
        <span className="row-card-name">Row</span> <strong data-present-row={row}>{row}</strong>
        <span className="row-card-of">of {rows}</span>
      </p>
      <p className="row-card-girth">
        <span className="row-card-label">
          {work.course.isTaken ? 'By the replan: weave' : 'By the plan: weave'} to a tape girth of
        </span>
        <BigLength mm={targetTape(work, row)} unit={unit} className="row-card-tape" />
      </p>
      <p className="row-card-do">
        {isTold && <BigLength mm={change} unit={unit} className="row-card-change" signed />}
        <span className="row-card-verb">{isTold ? verb(change) : 'keep the girth'}</span>
      </p>
      <p className="row-card-words">{words.get(row) ?? nextWord(words, row)}</p>
    </section>
  );
}

/** What the hand does with the weaver. */
function verb(change: number): string {
  return change > 0 ? 'let out' : 'draw in';
}

/** What comes next, so that it can be made ready. */
function nextWord(words: ReadonlyMap<number, string>, row: number): string {
  const next = [...words.keys()].sort((a, b) => a - b).find((one) => one > row);
  return next === undefined ? '' : `Row ${next}: ${words.get(next)}`;
}
