import type { CSSProperties, ReactNode } from 'react';
import { benchWords } from '#words/bench.ts';
import { BigLength } from './BigLength.tsx';
import type { BenchWork } from './benchWork.ts';
import { changeOf, replannedTape, targetTape } from './benchWork.ts';
import { RowChange } from './RowChange.tsx';
import { takeReplan } from './takeReplan.ts';

const words = benchWords.now;

/** Two girths for the row being woven, equally large: the replan that waits, and what holds until it is taken. */
export function RowChoice({ work }: { readonly work: BenchWork }) {
  const { row } = work.record;
  const { isTaken } = work.course;
  const { names } = words;
  return (
    <>
      <div className="row-choice">
        <Choice work={work} name={isTaken ? names.newReplan : names.replan} is="replan">
          <button type="button" className="main-button" onClick={() => takeReplan(work)}>
            {words.takeIt}
          </button>
        </Choice>
        <Choice work={work} name={isTaken ? names.lastReplan : names.plan} is="target" />
      </div>
      <p className="row-choice-note">
        {isTaken ? words.untilNewTaken(row) : words.untilTaken(row)}
      </p>
    </>
  );
}

interface ChoiceProps {
  readonly work: BenchWork;
  readonly name: string;
  readonly is: 'replan' | 'target';
  readonly children?: ReactNode;
}

function Choice({ work, name, is, children }: ChoiceProps) {
  const { unit } = work.plan.display;
  const { row } = work.record;
  const girth = (is === 'replan' ? replannedTape : targetTape)(work, row);
  const style = { '--letters': name.length } as CSSProperties;
  return (
    <section className={`row-choice-${is}`} aria-label={name}>
      <h2 style={style}>{name}</h2>
      <p className="row-card-girth">
        <BigLength
          mm={girth}
          unit={unit}
          className={is === 'replan' ? 'row-card-replan' : 'row-card-tape'}
        />
      </p>
      <div className="row-choice-do">
        <RowChange mm={changeOf(work, row, girth)} unit={unit} />
        {children}
      </div>
    </section>
  );
}
