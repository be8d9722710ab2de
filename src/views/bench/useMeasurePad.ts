import { useState } from 'react';
import { benchPadWords } from '#words/benchPad.ts';
import { withChange } from '../../keep/benchBook.ts';
import { changeBenchPage } from '../../keep/benchHere.ts';
import type { BenchWork } from './benchWork.ts';
import type { Measure } from './measureEntry.ts';
import { expectedOf, isWhole, measureEntry, typed } from './measureEntry.ts';
import { measureHad, withMeasure, withoutMeasure } from './recordMeasure.ts';

const { steps } = benchPadWords;

/** What is being measured, what is typed, and what is done with it. */
export function useMeasurePad(work: BenchWork, onDone: () => void) {
  const { record, rows, plan } = work;
  const [what, setWhat] = useState<Measure>('girth');
  const [row, setRow] = useState(Math.min(record.row, rows));
  const [text, setText] = useState('');
  const [isAsked, setAsked] = useState(false);
  const entry = measureEntry(work, what, row, text);
  const isEmpty = text.trim() === '';
  const seems = what !== 'height' && isWhole(text, expectedOf(work, what, row), plan.display.unit);
  const question = isAsked || (!isEmpty && seems && entry.mm !== null) ? entry.doubt : null;
  const put = (to: string) => {
    setText(to);
    setAsked(false);
  };
  const save = (mm: number) => {
    const change = withMeasure(work.record, what, row, mm);
    changeBenchPage((page) => withChange(page, change), steps[what](row));
    // who lays the rule along a basket lays it across next
    if (what !== 'length' || record.across[row]?.width !== undefined) return onDone();
    setWhat('width');
    put('');
  };
  return {
    what,
    row,
    text,
    question,
    put,
    key: (key: string) => put(typed(text, key)),
    back: () => put(text.replace(/\s*\d+\/\d+$|.$/, '')),
    measure: (next: Measure) => {
      setWhat(next);
      const isAcross = next === 'length' || next === 'width';
      // the row that has just been taped
      if (isAcross && record.girths[row] === undefined && record.girths[row - 1]) setRow(row - 1);
      put('');
    },
    goTo: (next: number) => {
      setRow(Math.min(rows, Math.max(1, next)));
      put(text);
    },
    /** Keeps the value; asks first where it is doubtful, and never keeps what cannot be. */
    keep() {
      if (entry.mm !== null && (!entry.doubt || (question && !entry.doubt.isImpossible))) {
        save(entry.mm);
      } else setAsked(true);
    },
    forget() {
      const change = withoutMeasure(work.record, what, row);
      changeBenchPage((page) => withChange(page, change), steps.forgotten(row));
      onDone();
    },
    had: measureHad(record, what, row),
  };
}
