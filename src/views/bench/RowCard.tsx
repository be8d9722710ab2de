import { useMemo } from 'react';
import { benchWords } from '#words/bench.ts';
import { rowStepWords } from '#words/rowSteps.ts';
import { rowWords } from '../../export/pdf/sheet/rowWords.ts';
import { quantities } from '../../model/quantity/quantities.ts';
import { BigLength } from './BigLength.tsx';
import type { BenchWork } from './benchWork.ts';
import { changeOf, targetTape, tellable } from './benchWork.ts';
import { ReplanWaits } from './ReplanWaits.tsx';

const words = benchWords.now;

/** The row being woven, in figures that are read from the other side of the table. */
export function RowCard({ work }: { readonly work: BenchWork }) {
  const { record, rows, plan, planBasket } = work;
  const { unit } = plan.display;
  const { row } = record;
  const said = useMemo(() => rowWords(planBasket, quantities(planBasket)), [planBasket]);
  if (row > rows) {
    return (
      <section className="row-card row-card-ended" aria-label={words.title}>
        <p className="row-card-verb">{words.allWoven(rows)}</p>
        <p className="row-card-words">{words.bindOff}</p>
      </section>
    );
  }
  const change = changeOf(work, row);
  const isTold = Math.abs(change) >= tellable;
  return (
    <section className="row-card" aria-label={words.title}>
      <ReplanWaits work={work} />
      <p className="row-card-row">
        <span className="row-card-name">{words.row}</span>{' '}
        <strong data-present-row={row}>{row}</strong>
        <span className="row-card-of">{words.of(rows)}</span>
      </p>
      <p className="row-card-girth">
        <span className="row-card-label">
          {work.course.isTaken ? words.byReplan : words.byPlan}
        </span>
        <BigLength mm={targetTape(work, row)} unit={unit} className="row-card-tape" />
      </p>
      <p className="row-card-do">
        {isTold && <BigLength mm={change} unit={unit} className="row-card-change" signed />}
        <span className="row-card-verb">{isTold ? verb(change) : rowStepWords.keep}</span>
      </p>
      <p className="row-card-words">{said.get(row) ?? nextWord(said, row)}</p>
    </section>
  );
}

/** What the hand does with the weaver. */
function verb(change: number): string {
  return change > 0 ? rowStepWords.letOut : rowStepWords.pullIn;
}

/** What comes next, so that it can be made ready. */
function nextWord(said: ReadonlyMap<number, string>, row: number): string {
  const next = [...said.keys()].sort((a, b) => a - b).find((one) => one > row);
  return next === undefined ? '' : words.next(next, said.get(next) ?? '');
}
