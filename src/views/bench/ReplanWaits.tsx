import { benchWords } from '#words/bench.ts';
import { Sentence } from '../../form/Sentence.tsx';
import { formatLength } from '../../plan/units.ts';
import type { BenchWork } from './benchWork.ts';
import { firstApart, replannedTape } from './benchWork.ts';
import { takeReplan } from './takeReplan.ts';

const words = benchWords.now;

/** Says at the row itself that a later one would better have another girth, with one press to take it. */
export function ReplanWaits({ work }: { readonly work: BenchWork }) {
  const row = firstApart(work);
  if (row === null || work.record.row <= work.course.replan.from) return null;
  const girth = formatLength(replannedTape(work, row), work.plan.display.unit);
  const { isTaken } = work.course;
  return (
    <div className="replan-waits">
      <span>
        <Sentence
          text={isTaken ? words.newReplanWaits(row) : words.replanWaits(row)}
          places={{ girth: <strong>{girth}</strong> }}
        />
        <small>{isTaken ? words.figuresOfReplan : words.figuresOfPlan}</small>
      </span>
      <button type="button" className="main-button" onClick={() => takeReplan(work)}>
        {words.takeIt}
      </button>
    </div>
  );
}
