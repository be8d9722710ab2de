import { useMemo } from 'react';
import { benchWords } from '#words/bench.ts';
import { rowWords } from '../../export/pdf/sheet/rowWords.ts';
import { quantities } from '../../model/quantity/quantities.ts';
import { BigLength } from './BigLength.tsx';
import type { BenchWork } from './benchWork.ts';
import { changeOf, isRowApart, targetTape } from './benchWork.ts';
import { ReplanWaits } from './ReplanWaits.tsx';
import { RowChange } from './RowChange.tsx';
import { RowChoice } from './RowChoice.tsx';

const words = benchWords.now;

/** The row being woven, in figures that are read from the other side of the table. */
export function RowCard({ work }: { readonly work: BenchWork }) {
  const { record, rows, planBasket } = work;
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
  const isApart = isRowApart(work, row);
  return (
    <section className="row-card" aria-label={words.title}>
      {!isApart && <ReplanWaits work={work} />}
      <p className="row-card-row">
        <span className="row-card-name">{words.row}</span>{' '}
        <strong data-present-row={row}>{row}</strong>
        <span className="row-card-of">{words.of(rows)}</span>
      </p>
      {isApart ? <RowChoice work={work} /> : <RowGirth work={work} />}
      <p className="row-card-words">{said.get(row) ?? nextWord(said, row)}</p>
    </section>
  );
}

/** The one girth that the row is woven to, and its change. */
function RowGirth({ work }: { readonly work: BenchWork }) {
  const { unit } = work.plan.display;
  const { row } = work.record;
  return (
    <>
      <p className="row-card-girth">
        <span className="row-card-label">
          {work.course.isTaken ? words.byReplan : words.byPlan}
        </span>
        <BigLength mm={targetTape(work, row)} unit={unit} className="row-card-tape" />
      </p>
      <RowChange mm={changeOf(work, row)} unit={unit} />
    </>
  );
}

/** What comes next, so that it can be made ready. */
function nextWord(said: ReadonlyMap<number, string>, row: number): string {
  const next = [...said.keys()].sort((a, b) => a - b).find((one) => one > row);
  return next === undefined ? '' : words.next(next, said.get(next) ?? '');
}
