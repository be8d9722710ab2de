import { rowStepWords } from '#words/rowSteps.ts';
import type { Unit } from '../../plan/schema.ts';
import { BigLength } from './BigLength.tsx';
import { tellable } from './benchWork.ts';

interface Props {
  /** How much wider than the row below, mm. */
  readonly mm: number;
  readonly unit: Unit;
}

/** How much wider or tighter than the row below, and what the hand does with the weaver. */
export function RowChange({ mm, unit }: Props) {
  const isTold = Math.abs(mm) >= tellable;
  return (
    <p className="row-card-do">
      {isTold && <BigLength mm={mm} unit={unit} className="row-card-change" signed />}
      <span className="row-card-verb">{isTold ? verb(mm) : rowStepWords.keep}</span>
    </p>
  );
}

function verb(change: number): string {
  return change > 0 ? rowStepWords.letOut : rowStepWords.pullIn;
}
