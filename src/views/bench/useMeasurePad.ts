import { useState } from 'react';
import { withChange } from '../../keep/benchBook.ts';
import { changeBenchPage } from '../../keep/benchHere.ts';
import type { BenchWork } from './benchWork.ts';
import { targetTape } from './benchWork.ts';
import type { Measure } from './measureEntry.ts';
import { isWhole, measureEntry, typed } from './measureEntry.ts';

/** What is being measured, what is typed, and what is done with it. */
export function useMeasurePad(work: BenchWork, onDone: () => void) {
  const { record, rows, plan } = work;
  const [what, setWhat] = useState<Measure>('girth');
  const [row, setRow] = useState(Math.min(record.row, rows));
  const [text, setText] = useState('');
  const [isAsked, setAsked] = useState(false);
  const entry = measureEntry(work, what, row, text);
  const isEmpty = text.trim() === '';
  const seems = what === 'girth' && isWhole(text, targetTape(work, row), plan.display.unit);
  const question = isAsked || (!isEmpty && seems && entry.mm !== null) ? entry.doubt : null;
  const put = (to: string) => {
    setText(to);
    setAsked(false);
  };
  const save = (mm: number) => {
    const now = work.record;
    const change =
      what === 'girth'
        ? { girths: { ...now.girths, [row]: mm }, row: row >= now.row ? row + 1 : now.row }
        : { height: { row, height: mm } };
    const label = what === 'girth' ? `tape girth of row ${row} as woven` : `height at row ${row}`;
    changeBenchPage((page) => withChange(page, change), label);
    onDone();
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
      const { [row]: _gone, ...girths } = work.record.girths;
      const change = what === 'girth' ? { girths } : { height: null };
      changeBenchPage((page) => withChange(page, change), `row ${row} not measured`);
      onDone();
    },
    had: what === 'girth' ? record.girths[row] : record.height?.height,
  };
}
